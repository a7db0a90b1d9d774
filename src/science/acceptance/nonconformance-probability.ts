import { normalCdf } from '../statistics/normal-cdf.ts'
import { conformanceProbability } from './conformance-probability.ts'
import { type ConformityInput, requireConformityInput } from './require-conformity-input.ts'

/**
 * Gives the probability that the quantity itself breaks a limit, given its measured value: what
 * accepting it would risk. Small risks keep their digits, which 1 - pc would lose.
 *
 * 1 - pc = Phi((TL - y) / u) + Phi((y - TU) / u); where nothing is below 0, the first from 0 on
 * and the sum divided by Phi(y / u)
 *
 * @param input as for conformanceProbability
 * @returns probability from 0 to 1
 * @throws RangeError as conformanceProbability does
 * Validity: as for conformanceProbability.
 * Source: JCGM 106:2012, 7.2 and 9.3 (from memory).
 * @example nonconformanceProbability({ value: 2.8, standardUncertainty: 0.12,
 *   upperLimit: 3 }) // 0.0478
 */
export function nonconformanceProbability(input: ConformityInput): number {
  const { value, u, lower, upper, isNonNegative } = requireConformityInput(
    'nonconformanceProbability',
    input,
  )
  if (u === 0) return 1 - conformanceProbability(input)
  if (isNonNegative && upper <= 0) return 1
  const above = upper === Number.POSITIVE_INFINITY ? 0 : normalCdf((value - upper) / u)
  const belowLower = lower === Number.NEGATIVE_INFINITY ? 0 : normalCdf((lower - value) / u)
  if (!isNonNegative) return belowLower + above
  const belowZero = normalCdf(-value / u)
  const inside = Math.max(0, belowLower - belowZero)
  return Math.min(1, (inside + above) / normalCdf(value / u))
}
