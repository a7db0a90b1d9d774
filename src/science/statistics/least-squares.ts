/** A linear least-squares fit: values = sum of coefficient x column, plus residuals. */
export interface LeastSquaresFit {
  readonly coefficients: readonly number[]
  readonly residuals: readonly number[]
  readonly sumOfSquares: number
  /** Diagonal of (A'A)^-1: times the residual variance it is the variance of a coefficient. */
  readonly inverseDiagonal: readonly number[]
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number)
  return sum
}

function minus(a: readonly number[], factor: number, b: readonly number[]): number[] {
  return a.map((value, i) => value - factor * (b[i] as number))
}

/** Gives the part of `vector` outside the base, and adds what was taken away to `parts`. */
function orthogonalPart(
  base: readonly (readonly number[])[],
  vector: readonly number[],
  parts: number[],
): number[] {
  let rest = [...vector]
  for (let pass = 0; pass < 2; pass++) {
    base.forEach((direction, k) => {
      const part = dot(direction, rest)
      parts[k] = (parts[k] ?? 0) + part
      rest = minus(rest, part, direction)
    })
  }
  return rest
}

/** Solves R x = z for an upper triangle stored by columns. */
function backSubstitute(upper: readonly (readonly number[])[], z: readonly number[]): number[] {
  const x = [...z]
  for (let j = upper.length - 1; j >= 0; j--) {
    const column = upper[j] as readonly number[]
    const solved = (x[j] as number) / (column[j] as number)
    x[j] = solved
    for (let k = 0; k < j; k++) x[k] = (x[k] as number) - (column[k] as number) * solved
  }
  return x
}

/**
 * Fits values by a weighted sum of columns so that the sum of squared residuals is smallest.
 *
 * Gram-Schmidt orthogonalisation done twice (QR), never the normal equations, whose squared
 * condition number loses half the digits.
 *
 * @param input columns: one or more, each as long as values and independent of the others;
 *   values: at least as many as columns
 * @returns coefficients in the order of the columns, residuals, their sum of squares, and the
 *   diagonal of (A'A)^-1
 * @throws RangeError on unequal lengths, too few values, or dependent columns
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 5.2 (from memory, checked against
 *   the certified values of NIST StRD Norris).
 * @example leastSquares({ columns: [[1, 1, 1], [0, 1, 2]], values: [1, 3, 5] }).coefficients[1]
 *   // 2
 */
export function leastSquares(input: {
  readonly columns: readonly (readonly number[])[]
  readonly values: readonly number[]
}): LeastSquaresFit {
  const { columns, values } = input
  if (columns.length === 0 || values.length < columns.length) {
    throw new RangeError(
      `leastSquares requires values for 1 or more columns, got ${values.length} for ${columns.length}`,
    )
  }
  const base: number[][] = []
  const upper: number[][] = []
  for (const column of columns) {
    if (column.length !== values.length) {
      throw new RangeError(
        `leastSquares requires columns of ${values.length} numbers, got ${column.length}`,
      )
    }
    const parts: number[] = []
    const rest = orthogonalPart(base, column, parts)
    const length = Math.sqrt(dot(rest, rest))
    if (!(length > 1e-12 * Math.sqrt(dot(column, column)))) {
      throw new RangeError('leastSquares requires independent, finite columns')
    }
    parts[base.length] = length
    upper.push(parts)
    base.push(rest.map((value) => value / length))
  }
  const projections: number[] = []
  const residuals = orthogonalPart(base, values, projections)
  const inverseDiagonal = columns.map(() => 0)
  columns.forEach((_, k) => {
    const unit = columns.map((__, j) => (j === k ? 1 : 0))
    backSubstitute(upper, unit).forEach((entry, j) => {
      inverseDiagonal[j] = (inverseDiagonal[j] as number) + entry * entry
    })
  })
  const sumOfSquares = dot(residuals, residuals)
  return {
    coefficients: backSubstitute(upper, projections),
    residuals,
    sumOfSquares,
    inverseDiagonal,
  }
}
