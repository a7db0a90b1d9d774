import { leastSquares } from '../statistics/least-squares.ts'

/** Variances of the cosine and the sine of one wave and their covariance, for a scatter of 1. */
export interface WaveVariance {
  readonly cosine: number
  readonly sine: number
  readonly joint: number
}

/**
 * Gives how the coefficients of each wave of a fit scatter, for a scatter of 1 of a reading.
 *
 * with each pair of columns turned by 45 degrees, (a + b) / sqrt 2 is a coefficient of its own: its
 * variance is (var a + var b) / 2 + cov(a, b)
 *
 * @param columns as harmonicColumns gives them
 * @returns one for each order, from 1 on
 * @throws RangeError where the columns depend on each other
 * Source: covariance of a linear least-squares fit, JCGM 100:2008, H.3.
 * @example waveVariances([[1, 1, 1, 1], [1, 0, -1, 0], [0, 1, 0, -1]])[0]?.cosine // 0.5000
 */
export function waveVariances(columns: readonly (readonly number[])[]): readonly WaveVariance[] {
  const values = columns[0] as readonly number[]
  const turned = columns.map((column, k) => {
    if (k === 0) return column
    const isCosine = k % 2 === 1
    const other = columns[isCosine ? k + 1 : k - 1] as readonly number[]
    return column.map((value, i) => {
      const beside = other[i] as number
      return Math.SQRT1_2 * (isCosine ? value + beside : value - beside)
    })
  })
  const plain = leastSquares({ columns, values }).inverseDiagonal
  const between = leastSquares({ columns: turned, values }).inverseDiagonal
  return Array.from({ length: (columns.length - 1) / 2 }, (_, i) => {
    const [cosine, sine] = [plain[2 * i + 1] as number, plain[2 * i + 2] as number]
    return { cosine, sine, joint: (between[2 * i + 1] as number) - (cosine + sine) / 2 }
  })
}
