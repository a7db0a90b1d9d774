import { requireRange } from '../check/require-range.ts'
import { leastSquares } from './least-squares.ts'

/** value = level + amplitude exp(-t / timeConstantS) - fallPerS t, t from the first time on. */
export interface SettlingFit {
  readonly level: number
  readonly amplitude: number
  readonly timeConstantS: number
  readonly fallPerS: number
  /** Standard error of the fall per unit of noise, the time constant counted as fitted too. */
  readonly fallPerNoise: number
  /** For independent noise; times the root of the variance inflation for a real trace. */
  readonly fallStandardError: number
  readonly residuals: readonly number[]
  readonly sumOfSquares: number
}

const gridCount = 40
const goldenSteps = 40
const golden = (Math.sqrt(5) - 1) / 2

/** Takes out of a vector, in place, its part along constant and centred time. */
function projectOut(vector: Float64Array, centred: Float64Array, squares: number): void {
  for (let pass = 0; pass < 2; pass++) {
    let sum = 0
    for (const value of vector) sum += value
    const mean = sum / vector.length
    let product = 0
    for (let i = 0; i < vector.length; i++) {
      product += ((vector[i] as number) - mean) * (centred[i] as number)
    }
    const slope = product / squares
    for (let i = 0; i < vector.length; i++) {
      vector[i] = (vector[i] as number) - mean - slope * (centred[i] as number)
    }
  }
}

/**
 * Gives the sum of squares left by the best level, amplitude and fall as a function of the
 * logarithm of the time constant. Level and fall are projected out once, so that a step of the
 * search costs one exponential a reading.
 */
function sumOfSquaresByLogTau(times: readonly number[], values: readonly number[]) {
  const mean = times.reduce((sum, t) => sum + t, 0) / times.length
  const centred = Float64Array.from(times, (t) => t - mean)
  const squares = centred.reduce((sum, t) => sum + t * t, 0)
  const rest = Float64Array.from(values)
  projectOut(rest, centred, squares)
  const decay = new Float64Array(times.length)
  return (logTau: number): number => {
    const rate = -1 / Math.exp(logTau)
    for (let i = 0; i < decay.length; i++) decay[i] = Math.exp(rate * (times[i] as number))
    projectOut(decay, centred, squares)
    let product = 0
    let norm = 0
    for (let i = 0; i < decay.length; i++) {
      product += (decay[i] as number) * (rest[i] as number)
      norm += (decay[i] as number) ** 2
    }
    const amplitude = product / norm
    let sum = 0
    for (let i = 0; i < decay.length; i++) {
      sum += ((rest[i] as number) - amplitude * (decay[i] as number)) ** 2
    }
    return sum
  }
}

/** Finds the logarithm of the time constant with the smallest sum of squares. */
function searchLogTimeConstant(rss: (logTau: number) => number, from: number, to: number): number {
  const step = (to - from) / (gridCount - 1)
  let best = 0
  let bestRss = Number.POSITIVE_INFINITY
  for (let index = 0; index < gridCount; index++) {
    const value = rss(from + index * step)
    if (value < bestRss) {
      best = index
      bestRss = value
    }
  }
  let low = from + Math.max(0, best - 1) * step
  let high = from + Math.min(gridCount - 1, best + 1) * step
  let left = high - golden * (high - low)
  let right = low + golden * (high - low)
  let rssLeft = rss(left)
  let rssRight = rss(right)
  for (let count = 0; count < goldenSteps; count++) {
    if (rssLeft <= rssRight) {
      ;[high, right, rssRight] = [right, left, rssLeft]
      left = high - golden * (high - low)
      rssLeft = rss(left)
    } else {
      ;[low, left, rssLeft] = [left, right, rssRight]
      right = low + golden * (high - low)
      rssRight = rss(right)
    }
  }
  return (low + high) / 2
}

/** Standard error of the fall per unit of noise, from the columns of all four parameters. */
function fallErrorPerNoise(times: readonly number[], timeConstantS: number): number {
  const decay = times.map((t) => Math.exp(-t / timeConstantS))
  const columns = [
    times.map(() => 1),
    decay,
    times.map((t) => -t),
    // Derivative by the time constant, up to a factor, which leaves the variance of the others.
    times.map((t, i) => (t / timeConstantS) * (decay[i] as number)),
  ]
  return Math.sqrt(leastSquares({ columns, values: times }).inverseDiagonal[2] as number)
}

/**
 * Fits a settling pressure that also falls steadily: level + amplitude exp(-t/tau) - fall x t.
 *
 * Variable projection: for each time constant the other three follow by linear least squares; the
 * time constant is searched on 40 steps of equal ratio from the mean sampling interval to the whole
 * window, then by golden section. Deterministic: no start values.
 *
 * @param input timesS: at least 6, increasing, in s; values: as many, any unit
 * @returns level at the first time, amplitude, timeConstantS (s), fallPerS (unit per s, positive
 *   when values fall), its standard error for independent noise, residuals
 * @throws RangeError outside these ranges
 * Validity: a window of at least three time constants; with one the fall is biased.
 * Source: G. H. Golub and V. Pereyra, SIAM J. Numer. Anal. 10 (1973) 413 (from memory); checked
 *   against a general nonlinear least-squares solver on two traces.
 * @example fitSettling({ timesS: [0, 1, 2, 3, 4, 5, 6, 7], values: [8, 4, 2, 1, 0.5, 0.25, 0.125,
 *   0.0625] }).timeConstantS // 1.4427
 */
export function fitSettling(input: {
  readonly timesS: readonly number[]
  readonly values: readonly number[]
}): SettlingFit {
  const { timesS, values } = input
  const count = requireRange('fitSettling', 'count of times', timesS.length, { from: 6, to: 1e6 })
  const first = timesS[0] as number
  const span = (timesS[count - 1] as number) - first
  requireRange('fitSettling', 'window in s', span, { from: 1e-9, to: 1e12 })
  const times = timesS.map((t) => t - first)
  const zero = values[0] as number
  const shifted = values.map((value) => value - zero)
  const logTau = searchLogTimeConstant(
    sumOfSquaresByLogTau(times, shifted),
    Math.log(span / (count - 1)),
    Math.log(span),
  )
  const timeConstantS = Math.exp(logTau)
  const decay = times.map((t) => Math.exp(-t / timeConstantS))
  const columns = [times.map(() => 1), decay, times.map((t) => -t)]
  const fit = leastSquares({ columns, values: shifted })
  const [level = Number.NaN, amplitude = Number.NaN, fallPerS = Number.NaN] = fit.coefficients
  const fallPerNoise = fallErrorPerNoise(times, timeConstantS)
  return {
    level: level + zero,
    amplitude,
    timeConstantS,
    fallPerS,
    fallPerNoise,
    fallStandardError: Math.sqrt(fit.sumOfSquares / (count - 4)) * fallPerNoise,
    residuals: fit.residuals,
    sumOfSquares: fit.sumOfSquares,
  }
}
