import { requireWhole } from '../check/require-whole.ts'
import { solveTransposed } from './solve-transposed.ts'

/**
 * Solves A x = b, given the lower triangle L of A = L L'.
 *
 * L y = b, then L' x = y
 *
 * @param lower L as choleskyFactor gives it, row by row
 * @param right b; its length is the size
 * @returns x
 * @throws RangeError when the lengths disagree
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 3.1 (from memory).
 * @example choleskySolve([2, 0, 1, 2], [8, 9])[1] // 1.25
 */
export function choleskySolve(lower: ArrayLike<number>, right: ArrayLike<number>): Float64Array {
  const size = right.length
  const length = size * size
  requireWhole('choleskySolve', 'lower length', lower.length, { from: length, to: length })
  const forward = new Float64Array(size)
  for (let i = 0; i < size; i++) {
    let sum = right[i] as number
    for (let k = 0; k < i; k++) sum -= (lower[i * size + k] as number) * (forward[k] as number)
    forward[i] = sum / (lower[i * size + i] as number)
  }
  return solveTransposed(lower, forward)
}
