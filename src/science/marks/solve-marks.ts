import { requireWhole } from '../check/require-whole.ts'
import { choleskyFactor } from '../linear/cholesky-factor.ts'
import { choleskySolve } from '../linear/cholesky-solve.ts'

/** A gap fitted to marks for one size of the prior and one size of the noise. */
export interface SolvedMarks {
  /** The constant, then one coefficient a term, in bands. */
  readonly gap: Float64Array
  /** Lower triangle of the inverse covariance of these. */
  readonly lower: Float64Array
  /** Logarithm of how likely the marks are under these sizes, but for a constant. */
  readonly evidence: number
}

/**
 * Fits a gap to marked band orders when the sizes of prior and noise are given.
 *
 * least of sum ((order - row gap) / sd)^2 + sum precision gap^2;
 * evidence = -(that least + log det A - sum log precision + 2 sum log sd) / 2, A the matrix of the
 * equations, the sum over precisions above 0
 *
 * @param rows one a mark: 1, then the terms at its place, row after row
 * @param orders of the marks
 * @param sizes sds: standard deviation of each mark, in bands; precisions: as markPrior gives them
 * @returns the fit
 * @throws RangeError when lengths disagree, or when the marks leave the fit open
 * Source: Bayesian linear model, D. J. C. MacKay 1992 for the evidence (from memory).
 * @example solveMarks([1, 1], [3, 5], { sds: [1, 1], precisions: [0] }).gap[0] // 4.0000
 */
export function solveMarks(
  rows: ArrayLike<number>,
  orders: readonly number[],
  sizes: { readonly sds: ArrayLike<number>; readonly precisions: ArrayLike<number> },
): SolvedMarks {
  const { sds, precisions } = sizes
  const size = precisions.length
  const expected = size * orders.length
  requireWhole('solveMarks', 'rows length', rows.length, { from: expected, to: expected })
  requireWhole('solveMarks', 'sds length', sds.length, { from: orders.length, to: orders.length })
  const matrix = new Float64Array(size * size)
  const right = new Float64Array(size)
  for (let k = 0; k < size; k++) matrix[k * size + k] = precisions[k] as number
  orders.forEach((order, i) => {
    const weight = 1 / (sds[i] as number) ** 2
    for (let k = 0; k < size; k++) {
      const weighted = weight * (rows[i * size + k] as number)
      right[k] = (right[k] as number) + weighted * order
      for (let l = 0; l <= k; l++) {
        matrix[k * size + l] =
          (matrix[k * size + l] as number) + weighted * (rows[i * size + l] as number)
      }
    }
  })
  const lower = choleskyFactor(matrix, size)
  const gap = choleskySolve(lower, right)
  let misfit = 0
  orders.forEach((order, i) => {
    let fitted = 0
    for (let k = 0; k < size; k++) fitted += (rows[i * size + k] as number) * (gap[k] as number)
    const sd = sds[i] as number
    misfit += ((order - fitted) / sd) ** 2 + 2 * Math.log(sd)
  })
  for (let k = 0; k < size; k++) {
    const precision = precisions[k] as number
    misfit += 2 * Math.log(lower[k * size + k] as number)
    if (precision > 0) misfit += precision * (gap[k] as number) ** 2 - Math.log(precision)
  }
  return { gap, lower, evidence: -misfit / 2 }
}
