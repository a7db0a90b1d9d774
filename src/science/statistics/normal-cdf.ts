import { requireFinite } from '../check/require-finite.ts'

/** Beyond it the density, and with it the tail, is below the smallest double. */
const lastZ = 39

/** exp(-z^2 / 2) with z^2 split, so that its rounding does not grow into the tail's. */
function bell(z: number): number {
  const coarse = Math.round(z * 16) / 16
  return Math.exp((-coarse * coarse) / 2) * Math.exp((-(z - coarse) * (z + coarse)) / 2)
}

/** Mills' ratio: tail over density, by the continued fraction from its end. */
function tailOverDensity(z: number): number {
  const stepCount = Math.ceil(20 + 400 / (z * z))
  let rest = z
  for (let step = stepCount; step >= 1; step--) rest = z + step / rest
  return 1 / rest
}

/** The area from 0 to z over the density, all terms of one sign. */
function middleOverDensity(z: number): number {
  let term = z
  let sum = z
  for (let odd = 3; Math.abs(term) > 1e-18 * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd
    sum += term
  }
  return sum
}

/**
 * Gives the probability that a standard normal quantity is at most z.
 *
 * Phi(z) = 1/2 + phi(z) (z + z^3/3 + z^5/15 + ...) for |z| < 1; beyond, phi(z) times the
 * continued fraction 1/(|z| + 1/(|z| + 2/(|z| + ...))), from 1 for z > 0
 *
 * @param z any finite number; the upper tail is normalCdf(-z)
 * @returns probability from 0 to 1
 * @throws RangeError when z is not finite
 * Validity: relative error below 1e-14 down to z = -37.5; 0 below -39.
 * Source: Abramowitz and Stegun 26.2.11 and 26.2.14 (from memory, checked against 60 digits).
 * @example normalCdf(1.4) // 0.9192
 */
export function normalCdf(z: number): number {
  requireFinite('normalCdf', 'z', z)
  const away = Math.abs(z)
  const density = bell(Math.min(away, lastZ)) / Math.sqrt(2 * Math.PI)
  if (away < 1) return 0.5 + density * middleOverDensity(z)
  const tail = away > lastZ ? 0 : density * tailOverDensity(away)
  return z < 0 ? tail : 1 - tail
}
