import { requireRange } from '../check/require-range.ts'
import type { AnnularTerm } from '../surface/annular-terms.ts'

/**
 * Gives how far the coefficients of a gap are expected to lie from 0, before a mark is seen.
 *
 * sd = scale / (1 + 0.18 m^2 + 0.5 p^2), m waves around, p degree along the radius; for the plane
 * (m = 1, p = 0) and the constant any value is as likely
 *
 * @param terms of the gap
 * @param scaleBands from 1e-6 to 1000
 * @returns 1 / sd^2 of the constant, then of the terms
 * @throws RangeError outside this range
 * Source: chosen on synthetic faces, no published source.
 * @example markPrior([{ angularOrder: 0, radialOrder: 2, isSine: false }], 0.5)[1] // 36.000
 */
export function markPrior(terms: readonly AnnularTerm[], scaleBands: number): Float64Array {
  requireRange('markPrior', 'scaleBands', scaleBands, { from: 1e-6, to: 1000 })
  const precisions = terms.map(({ angularOrder: m, radialOrder: p }) => {
    if (m === 1 && p === 0) return 0
    const sd = scaleBands / (1 + 0.18 * m * m + 0.5 * p * p)
    return 1 / (sd * sd)
  })
  return Float64Array.from([0, ...precisions])
}
