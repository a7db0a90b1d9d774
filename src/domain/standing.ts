import { combinedParts } from './combined-parts.ts'
import { currentOnly } from './current-only.ts'
import type { Evidence } from './evidence.ts'
import type { FlatnessReading } from './flatness.ts'
import { lapBefore } from './lap-before.ts'
import type { MeasuredValue } from './measured-value.ts'
import type { StaticTest } from './static-test.ts'

/**
 * The readings that speak for the seal: of each face and condition the newest that no correction
 * replaced. A face lapped and read again speaks by its last reading; the earlier ones stay in
 * the record. A count of lines doesn't see all of a face, so beside a newer one the newest reading
 * of the whole face goes on speaking, until the face is lapped again or read whole again; matting
 * leaves its form as it is.
 * @param flatnessReadings oldest first
 */
export function standingReadings({
  flatnessReadings: readings,
  lapCycles: cycles,
}: Pick<Evidence, 'flatnessReadings' | 'lapCycles'>): readonly FlatnessReading[] {
  const keyOf = (one: FlatnessReading) => `${one.componentId} ${one.condition}`
  const current = currentOnly(readings).filter((one) => {
    // A combination falls with any of its parts.
    return combinedParts([one], readings).every((part) => part.replacedById === null)
  })
  const newest = newestOfEach(current, keyOf)
  const whole = newestOfEach(current.filter(seesAll), keyOf)
  const lapOf = (one: FlatnessReading) => lapBefore(one, { readings, cycles })?.cycle.id
  return current.filter((one) => {
    if (newest.includes(one)) return true
    const last = newest.find((other) => keyOf(other) === keyOf(one))
    return last !== undefined && whole.includes(one) && lapOf(one) === lapOf(last)
  })
}

function seesAll({ sees }: FlatnessReading): boolean {
  return sees === 'whole-surface'
}

/** The tests that speak for the seal: of each section the newest that no correction replaced. */
export function standingTests(tests: readonly StaticTest[]): readonly StaticTest[] {
  return newestOfEach(currentOnly(tests), (one) => one.section)
}

/** The values that speak: of each characteristic, component and condition the newest. */
export function standingValues(values: readonly MeasuredValue[]): readonly MeasuredValue[] {
  return newestOfEach(
    currentOnly(values),
    (one) => `${one.characteristic} ${one.componentId} ${one.condition}`,
  )
}

function newestOfEach<T>(records: readonly T[], keyOf: (one: T) => string): readonly T[] {
  const newest = new Map(records.map((one) => [keyOf(one), one]))
  return records.filter((one) => newest.get(keyOf(one)) === one)
}
