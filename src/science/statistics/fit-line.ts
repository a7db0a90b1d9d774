import { requireRange } from '../check/require-range.ts'
import { leastSquares } from './least-squares.ts'

/** A straight line through points, with the standard error for independent noise. */
export interface LineFit {
  readonly intercept: number
  readonly slope: number
  /** Standard error of the slope per unit of noise: 1 / sqrt(Sxx). */
  readonly slopePerNoise: number
  readonly slopeStandardError: number
  readonly residualStandardDeviation: number
  readonly residuals: readonly number[]
  readonly sumOfSquares: number
}

/**
 * Fits a straight line by least squares.
 *
 * y = intercept + slope x; s^2 = sum of squares / (n - 2); slopeStandardError = s / sqrt(Sxx)
 *
 * @param input x, y: equally long, at least 3 finite numbers, x not all the same
 * @returns the line, its residuals and the standard error of the slope
 * @throws RangeError with fewer than 3 points, unequal lengths or equal x
 * Validity: the standard error holds for independent noise of one size; see
 *   autocorrelationCorrection for traces.
 * Source: NIST/SEMATECH e-Handbook 4.1.4.1; checked against the certified values of StRD Norris.
 * @example fitLine({ x: [0, 1, 2, 3], y: [1, 3, 5, 7] }).slope // 2
 */
export function fitLine(input: {
  readonly x: readonly number[]
  readonly y: readonly number[]
}): LineFit {
  const { x, y } = input
  const count = requireRange('fitLine', 'count of points', x.length, { from: 3, to: 1e7 })
  const meanX = x.reduce((sum, value) => sum + value, 0) / count
  const first = y[0] ?? Number.NaN
  // Shifted by the first value: a small fall on a large pressure keeps its digits.
  const values = y.map((value) => value - first)
  const fit = leastSquares({ columns: [x.map(() => 1), x.map((value) => value - meanX)], values })
  const [middle = Number.NaN, slope = Number.NaN] = fit.coefficients
  const variance = fit.sumOfSquares / (count - 2)
  const slopePerNoise = Math.sqrt(fit.inverseDiagonal[1] as number)
  return {
    intercept: middle + first - slope * meanX,
    slope,
    slopePerNoise,
    slopeStandardError: Math.sqrt(variance) * slopePerNoise,
    residualStandardDeviation: Math.sqrt(variance),
    residuals: fit.residuals,
    sumOfSquares: fit.sumOfSquares,
  }
}
