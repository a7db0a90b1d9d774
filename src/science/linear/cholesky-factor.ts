import { requireWhole } from '../check/require-whole.ts'

/**
 * Gives the lower triangle L of a symmetric, positive definite matrix A = L L'.
 *
 * @param matrix A, size x size, row by row; only its lower triangle is read
 * @param size whole, from 1 to 10 000
 * @returns L, row by row, with zeros above its diagonal
 * @throws RangeError when the lengths disagree, or the matrix is not positive definite (also when
 *   it holds NaN)
 * Source: A.-L. Cholesky; G. H. Golub and C. F. Van Loan, Matrix Computations, 4.2 (from memory).
 * @example choleskyFactor([4, 2, 2, 5], 2)[3] // 2
 */
export function choleskyFactor(matrix: ArrayLike<number>, size: number): Float64Array {
  requireWhole('choleskyFactor', 'size', size, { from: 1, to: 10_000 })
  requireWhole('choleskyFactor', 'matrix length', matrix.length, {
    from: size * size,
    to: size * size,
  })
  const lower = new Float64Array(size * size)
  for (let i = 0; i < size; i++) {
    const row = i * size
    for (let j = 0; j <= i; j++) {
      const other = j * size
      let sum = matrix[row + j] as number
      for (let k = 0; k < j; k++) {
        sum -= (lower[row + k] as number) * (lower[other + k] as number)
      }
      if (i !== j) {
        lower[row + j] = sum / (lower[other + j] as number)
        continue
      }
      if (!(sum > 0 && sum < Number.POSITIVE_INFINITY)) {
        throw new RangeError(
          `choleskyFactor requires a positive definite matrix, pivot ${i}: ${sum}`,
        )
      }
      lower[row + i] = Math.sqrt(sum)
    }
  }
  return lower
}
