import { requireRange } from '../check/require-range.ts'
import { normalCdf } from './normal-cdf.ts'

/** A first guess of the lower tail's z, good to 5e-4. */
function guess(tail: number): number {
  const t = Math.sqrt(-2 * Math.log(tail))
  const over = 2.515_517 + t * (0.802_853 + t * 0.010_328)
  const under = 1 + t * (1.432_788 + t * (0.189_269 + t * 0.001_308))
  return over / under - t
}

/**
 * Gives the value that a standard normal quantity stays below with a given probability.
 *
 * z such that Phi(z) = probability: a rational first guess, then Halley's steps
 * z - e / (1 + z e / 2) with e = (Phi(z) - probability) / phi(z), in the smaller tail
 *
 * @param probability from 1e-300 to 1 - 1e-16
 * @returns z, negative below a probability of 0.5
 * @throws RangeError outside this range
 * Validity: relative error below 1e-14.
 * Source: first guess Abramowitz and Stegun 26.2.23 (from memory); refined to the last digit, so
 *   its coefficients do not show in the result.
 * @example normalQuantile(0.95) // 1.6448536
 */
export function normalQuantile(probability: number): number {
  requireRange('normalQuantile', 'probability', probability, { from: 1e-300, to: 1 - 1e-16 })
  if (probability === 0.5) return 0
  const tail = Math.min(probability, 1 - probability)
  let z = guess(tail)
  for (let step = 0; step < 3; step++) {
    const tailThere = normalCdf(z)
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
    const e = (tailThere - tail) / density
    z -= e / (1 + (z * e) / 2)
  }
  return probability < 0.5 ? z : -z
}
