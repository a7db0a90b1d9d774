import { requireRange } from '../check/require-range.ts'
import { studentTUpperTail } from './student-t-upper-tail.ts'

/**
 * Gives the value that Student's t stays below with a given probability.
 *
 * t such that P(T <= t) = probability, by bisection of the upper tail
 *
 * @param input probability: from 1e-6 to 1 - 1e-6;
 *   degreesOfFreedom: from 0.5 to 1e6, fractions allowed
 * @returns t, negative below a probability of 0.5
 * @throws RangeError outside these ranges
 * Validity: about 10 significant digits.
 * Source: definition of the quantile; checked against printed tables.
 * @example studentTQuantile({ probability: 0.975, degreesOfFreedom: 10 }) // 2.228
 */
export function studentTQuantile(input: {
  readonly probability: number
  readonly degreesOfFreedom: number
}): number {
  const { probability, degreesOfFreedom } = input
  requireRange('studentTQuantile', 'probability', probability, { from: 1e-6, to: 1 - 1e-6 })
  requireRange('studentTQuantile', 'degreesOfFreedom', degreesOfFreedom, { from: 0.5, to: 1e6 })
  if (probability === 0.5) return 0
  const tail = Math.min(probability, 1 - probability)
  let low = 0
  let high = 1
  while (studentTUpperTail({ t: high, degreesOfFreedom }) > tail) {
    low = high
    high *= 2
  }
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (studentTUpperTail({ t: middle, degreesOfFreedom }) > tail) low = middle
    else high = middle
  }
  return probability > 0.5 ? high : -high
}
