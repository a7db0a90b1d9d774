import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'

/**
 * Gives the total indicator reading, also called full indicator movement, in um.
 *
 * highest - lowest reading of one full turn
 *
 * @param valuesUm two or more readings, zeroed anywhere
 * @returns um, 0 or more
 * @throws RangeError with fewer readings, or one that is not finite
 * Validity: of the positions that were read: between them the needle may have gone further
 *   (couldBeMissedUm). Noise raises it: by 2.8 standard deviations of a reading for eight positions
 *   of a true shaft (mean range of a normal sample).
 * Source: circular run-out, ISO 1101, as explained with a worked example on a page about
 *   cylindricity and run-out: -0.01 to +0.03 mm is 0.04 mm.
 * @example totalIndicatorReadingUm([-10, 0, 30, 5]) // 40
 */
export function totalIndicatorReadingUm(valuesUm: readonly number[]): number {
  const name = 'totalIndicatorReadingUm'
  requireWhole(name, 'count of readings', valuesUm.length, { from: 2, to: 1_000_000 })
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const value of valuesUm) {
    requireFinite(name, 'reading', value)
    low = Math.min(low, value)
    high = Math.max(high, value)
  }
  return high - low
}
