import { normalCdf } from '../statistics/normal-cdf.ts'
import { atMost } from './at-most.ts'
import { type ConformityInput, requireConformityInput } from './require-conformity-input.ts'

/** Phi of a place that may be infinite. */
function below(z: number): number {
  if (Number.isFinite(z)) return normalCdf(z)
  return z < 0 ? 0 : 1
}

/** The normal probability from one place to another, from the tail in which digits are kept. */
function between(from: number, to: number): number {
  return from > 0 ? below(-from) - below(-to) : below(to) - below(from)
}

/**
 * Gives the probability that the quantity itself keeps its limits, given its measured value.
 *
 * pc = Phi((TU - y) / u) - Phi((TL - y) / u); where nothing is below 0, the normal is cut there:
 * TL at least 0, and pc divided by Phi(y / u)
 *
 * @param input value y, upperLimit TU, lowerLimit TL: in one unit, at least one limit;
 *   standardUncertainty u: from 0, in the same unit; isNonNegative: nothing is below 0 (false)
 * @returns probability from 0 to 1; for u = 0, 1 within the limits or at one, else 0
 * @throws RangeError when a number is out of range, or y is 30 u below 0 where nothing is
 * Validity: what is known is normal with standard deviation u, and nothing was known before.
 * Source: JCGM 106:2012, 7.2 and 7.4 (from memory).
 * @example conformanceProbability({ value: -5.47, standardUncertainty: 0.05,
 *   upperLimit: -5.4 }) // 0.9192
 */
export function conformanceProbability(input: ConformityInput): number {
  const { value, u, lower, upper, isNonNegative } = requireConformityInput(
    'conformanceProbability',
    input,
  )
  if (u === 0) {
    const keepsUpper = upper === Number.POSITIVE_INFINITY || atMost({ value, limit: upper })
    const keepsLower = lower === Number.NEGATIVE_INFINITY || atMost({ value: lower, limit: value })
    return keepsUpper && keepsLower ? 1 : 0
  }
  const from = isNonNegative ? Math.max(lower, 0) : lower
  if (from >= upper) return 0
  const within = between((from - value) / u, (upper - value) / u)
  return isNonNegative ? Math.min(1, within / normalCdf(value / u)) : within
}
