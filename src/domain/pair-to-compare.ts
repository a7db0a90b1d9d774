import { currentOnly } from './current-only.ts'
import type { FlatnessReading } from './flatness.ts'

/** A reading of a whole face. */
export type WholeReading = FlatnessReading & {
  readonly wholeFace: NonNullable<FlatnessReading['wholeFace']>
}

/** The readings of whole faces that no correction replaced, oldest first. */
export function wholeReadings(readings: readonly FlatnessReading[]): readonly WholeReading[] {
  return currentOnly(readings).filter((one): one is WholeReading => one.wholeFace !== null)
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
