import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { normalQuantile } from './normal-quantile.ts'

/** A straight line that a few bad points hardly move. */
export interface TheilSenFit {
  readonly slope: number
  /** Median of value - slope x time. */
  readonly intercept: number
  /** Between which the slope lies with the probability asked for, by the ranks of the slopes. */
  readonly slopeInterval: readonly [number, number]
}

const name = 'theilSen'

/**
 * Fits a straight line by the median of the slopes between all pairs of points, with an interval by
 * their ranks.
 *
 * slope = median of (y_j - y_i) / (x_j - x_i); with s^2 = (n (n - 1) (2 n + 5) - ties) / 18 the
 * interval runs from rank round((N - z s) / 2) to round((N + z s) / 2) - 1 of the N slopes, from 0,
 * halves rounded to even
 *
 * @param input x, y: equally long, 2 to 2000 finite numbers, x not all the same; probability of the
 *   interval: from 0.5 to 0.999, 0.95 when absent
 * @returns slope, intercept and interval, in y per x
 * @throws RangeError outside these ranges
 * Validity: independent noise. Up to 29 % of bad points leave the slope bounded. With fewer than ten
 *   points the ranks of a normal approximation say too little.
 * Source: P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379 (from memory); ranks and ties as a general
 *   numerical library has them, checked against its output.
 * @example theilSen({ x: [0, 1, 2, 3], y: [1, 3, 50, 7] }).slope // 2
 */
export function theilSen(input: {
  readonly x: readonly number[]
  readonly y: readonly number[]
  readonly probability?: number
}): TheilSenFit {
  const { x, y, probability = 0.95 } = input
  const count = requireRange(name, 'count of points', x.length, { from: 2, to: 2000 })
  requireRange(name, 'count of values', y.length, { from: count, to: count })
  requireRange(name, 'probability', probability, { from: 0.5, to: 0.999 })
  for (const value of [...x, ...y]) requireFinite(name, 'value', value)
  const slopes = sortedSlopes(x, y)
  if (slopes.length === 0) throw new RangeError(`${name} requires two different x`)
  const slope = medianOf(slopes)
  const z = normalQuantile((1 - probability) / 2)
  const spread = Math.sqrt((count * (count - 1) * (2 * count + 5) - tiesOf(x) - tiesOf(y)) / 18)
  const last = slopes.length - 1
  const high = Math.min(roundToEven((slopes.length - z * spread) / 2), last)
  const low = Math.max(roundToEven((slopes.length + z * spread) / 2) - 1, 0)
  return {
    slope,
    intercept: medianOf(
      Float64Array.from(y, (value, i) => value - slope * (x[i] as number)).sort(),
    ),
    slopeInterval: [slopes[low] as number, slopes[high] as number],
  }
}

function sortedSlopes(x: readonly number[], y: readonly number[]): Float64Array {
  const count = x.length
  const slopes = new Float64Array((count * (count - 1)) / 2)
  let at = 0
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const run = (x[j] as number) - (x[i] as number)
      if (run !== 0) slopes[at++] = ((y[j] as number) - (y[i] as number)) / run
    }
  }
  return slopes.subarray(0, at).sort()
}

function medianOf(sorted: Float64Array): number {
  const middle = Math.floor(sorted.length / 2)
  const upper = sorted[middle] as number
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2
}

/** Sum of k (k - 1) (2 k + 5) over the values that stand k times. */
function tiesOf(values: readonly number[]): number {
  const counts = new Map<number, number>()
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1)
  return [...counts.values()].reduce((sum, k) => sum + k * (k - 1) * (2 * k + 5), 0)
}

function roundToEven(value: number): number {
  const floor = Math.floor(value)
  if (value - floor !== 0.5) return Math.round(value)
  return floor % 2 === 0 ? floor : floor + 1
}
