import { currentOnly } from './current-only.ts'
import type { FlatnessReading } from './flatness.ts'
import type { MeasuredValue } from './measured-value.ts'
import type { StaticTest } from './static-test.ts'

/**
 * The readings that speak for the seal: of each face and condition the newest that no correction
 * replaced. A face lapped and read again speaks by its last reading; the earlier ones stay in
 * the record.
 * @param readings oldest first
 */
export function standingReadings(readings: readonly FlatnessReading[]): readonly FlatnessReading[] {
  return newestOfEach(currentOnly(readings), (one) => `${one.componentId} ${one.condition}`)
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
