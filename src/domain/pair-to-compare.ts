import { currentOnly } from './current-only.ts'
import { firstRecordedAt } from './first-recorded-at.ts'
import type { FlatnessReading } from './flatness.ts'

/** A reading of a whole face. */
export type WholeReading = FlatnessReading & {
  readonly wholeFace: NonNullable<FlatnessReading['wholeFace']>
}

/**
 * The readings of whole faces that no correction replaced, as the face went through them: as found
 * before as left, then by when they were first written down. A correction keeps the place of what
 * it replaced.
 */
export function wholeReadings(readings: readonly FlatnessReading[]): readonly WholeReading[] {
  const place = (one: WholeReading) =>
    `${one.condition === 'as-found' ? 0 : 1} ${firstRecordedAt(readings, one)}`
  return currentOnly(readings)
    .filter((one): one is WholeReading => one.wholeFace !== null)
    .sort((a, b) => (place(a) === place(b) ? a.id - b.id : place(a) < place(b) ? -1 : 1))
}

/**
 * The two readings of a face that are looked at first: the last as found beside the last as left,
 * else the last two that were read, not combined; null with fewer than two.
 * @param readings of one face, oldest first
 */
export function pairToCompare(
  readings: readonly WholeReading[],
): readonly [WholeReading, WholeReading] | null {
  const found = readings.findLast((one) => one.condition === 'as-found')
  const left = readings.findLast((one) => one.condition === 'as-left')
  if (found !== undefined && left !== undefined) return [found, left]
  // A combination beside one of its parts says little.
  const single = readings.filter((one) => one.wholeFace.source.kind !== 'combined')
  const [first, second] = (single.length >= 2 ? single : readings).slice(-2)
  return first === undefined || second === undefined ? null : [first, second]
}
