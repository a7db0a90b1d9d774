import { requireWhole } from '../check/require-whole.ts'
import { leastSquares } from '../statistics/least-squares.ts'
import { distinctAngles } from './distinct-angles.ts'
import { harmonicColumns } from './harmonic-columns.ts'

/** Beyond it nobody reads lobes off a dial by hand (common practice, no source). */
const mostOrder = 15
/** How much more an amplitude may scatter than with the same count evenly spread: twice, so that
 * its variance is four times as large (common practice, no source). */
const mostVarianceRatio = 4

/**
 * Gives the highest order of waves that readings at these positions can tell, with an equal weight
 * for each reading.
 *
 * largest K with 2 K + 1 <= count of positions, at which no amplitude scatters more than twice as
 * much as at even positions
 *
 * @param anglesDeg three or more different positions, repeats allowed
 * @returns from 1 to 15
 * @throws RangeError with fewer than three different positions
 * Validity: a wave of an order above half the count of even positions looks like one of a lower
 *   order; no fit can tell.
 * Source: sampling theorem; the bound of the scatter is common practice, no source.
 * @example highestOrderFor([0, 45, 90, 135, 180, 225, 270, 315]) // 3
 */
export function highestOrderFor(anglesDeg: readonly number[]): number {
  const name = 'highestOrderFor'
  const angles = distinctAngles(anglesDeg)
  requireWhole(name, 'count of positions', angles.length, { from: 3, to: 100_000 })
  const most = Math.min(mostOrder, Math.floor((angles.length - 1) / 2))
  for (let order = most; order > 1; order--) {
    if (varianceRatio(angles, order) <= mostVarianceRatio) return order
  }
  return 1
}

/** Largest variance of a coefficient against that at even positions, 2 / count. */
function varianceRatio(angles: readonly number[], order: number): number {
  const columns = harmonicColumns(angles, order)
  try {
    const { inverseDiagonal } = leastSquares({ columns, values: angles })
    return Math.max(...inverseDiagonal.slice(1)) * (angles.length / 2)
  } catch (error) {
    // Dependent columns: these positions can't tell this order at all.
    if (error instanceof RangeError) return Number.POSITIVE_INFINITY
    throw error
  }
}
