import { requireWhole } from '../check/require-whole.ts'

/**
 * Solves L' x = z for a lower triangle L.
 *
 * With L from A = L L' and z independent standard normal numbers, x is a draw whose covariance
 * matrix is the inverse of A.
 *
 * @param lower L, row by row, nothing on its diagonal 0
 * @param right z; its length is the size
 * @returns x
 * @throws RangeError when the lengths disagree
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 3.1 (from memory).
 * @example solveTransposed([2, 0, 1, 4], [3, 8])[0] // 0.5
 */
export function solveTransposed(lower: ArrayLike<number>, right: ArrayLike<number>): Float64Array {
  const size = right.length
  const length = size * size
  requireWhole('solveTransposed', 'lower length', lower.length, { from: length, to: length })
  const x = Float64Array.from(right)
  for (let i = size - 1; i >= 0; i--) {
    const solved = (x[i] as number) / (lower[i * size + i] as number)
    x[i] = solved
    for (let k = 0; k < i; k++) x[k] = (x[k] as number) - (lower[i * size + k] as number) * solved
  }
  return x
}
