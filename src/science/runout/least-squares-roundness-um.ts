import type { DialPoint } from './dial-point.ts'
import { fitHarmonics } from './fit-harmonics.ts'
import { totalIndicatorReadingUm } from './total-indicator-reading-um.ts'

/**
 * Gives the roundness deviation of a turn from its least-squares circle (LSCI), peak to valley, in
 * um: what a better centring could not take away.
 *
 * highest - lowest of value - (mean + a cos t + b sin t)
 *
 * @param points at three or more different angles t
 * @returns um, 0 or more
 * @throws RangeError with fewer positions
 * Validity: of the positions that were read; offset small against the radius: the square of the
 *   offset over the radius is left out (0.025 um for 50 um on a radius of 50 mm). On vee-blocks the
 *   centre moves with the lobes, and this is no roundness.
 * Source: ISO 12181-1, from memory.
 * @example leastSquaresRoundnessUm([0, 7, 24, 38, 40, 33, 16, 2].map((valueUm, i) => ({
 *   angleDeg: 45 * i, valueUm }))) // 1.920
 */
export function leastSquaresRoundnessUm(points: readonly DialPoint[]): number {
  return totalIndicatorReadingUm(fitHarmonics(points, { highestOrder: 1 }).residualsUm)
}
