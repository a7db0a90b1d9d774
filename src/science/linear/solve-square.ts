import { requireWhole } from '../check/require-whole.ts'

/**
 * Solves A x = b for a small square matrix by elimination, the largest pivot of each column first.
 *
 * @param rows A, one list a row
 * @param right b; its length is the size, from 1 to 100
 * @returns x; null where A is singular or nearly so (a pivot of at most 1e-14 of the largest entry)
 * @throws RangeError when the lengths disagree
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 3.4 (from memory).
 * @example solveSquare([[0, 2], [1, 1]], [4, 5])[0] // 3
 */
export function solveSquare(
  rows: readonly (readonly number[])[],
  right: readonly number[],
): number[] | null {
  const size = right.length
  requireWhole('solveSquare', 'size', size, { from: 1, to: 100 })
  requireWhole('solveSquare', 'count of rows', rows.length, { from: size, to: size })
  const left = rows.map((row, i) => {
    requireWhole('solveSquare', `length of row ${i}`, row.length, { from: size, to: size })
    return [...row, right[i] as number]
  })
  const least = 1e-14 * Math.max(...rows.map((row) => Math.max(...row.map(Math.abs))))
  for (let k = 0; k < size; k++) {
    const sizeOf = (row: readonly number[]) => Math.abs(row[k] as number)
    const rest = left.slice(k)
    const best = k + rest.reduce((at, row, i) => (sizeOf(row) > sizeOf(rest[at] ?? []) ? i : at), 0)
    const pivot = left[best] as number[]
    left[best] = left[k] as number[]
    left[k] = pivot
    if (!(sizeOf(pivot) > least)) return null
    left.forEach((row, i) => {
      const share = i === k ? 0 : (row[k] as number) / (pivot[k] as number)
      if (share === 0) return
      for (let j = k; j <= size; j++) row[j] = (row[j] as number) - share * (pivot[j] as number)
    })
  }
  return left.map((row, i) => (row[size] as number) / (row[i] as number))
}
