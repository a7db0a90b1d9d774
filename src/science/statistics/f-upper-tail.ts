import { requireRange } from '../check/require-range.ts'
import { incompleteBetaRatio } from './incomplete-beta-ratio.ts'

/**
 * Gives the probability that an F ratio exceeds a value.
 *
 * P(F > f) = I_x(v2 / 2, v1 / 2) with x = v2 / (v2 + v1 f)
 *
 * @param input f: ratio of variances, from 0 to 1e300; numeratorDegreesOfFreedom v1 and
 *   denominatorDegreesOfFreedom v2: from 0.5 to 1e6, fractions allowed
 * @returns probability from 0 to 1
 * @throws RangeError outside these ranges
 * Source: Abramowitz and Stegun 26.6.2 (from memory, checked against the closed form for v1 = 2).
 * @example fUpperTail({ f: 4.103, numeratorDegreesOfFreedom: 2, denominatorDegreesOfFreedom: 10 })
 *   // 0.0500
 */
export function fUpperTail(input: {
  readonly f: number
  readonly numeratorDegreesOfFreedom: number
  readonly denominatorDegreesOfFreedom: number
}): number {
  const { f, numeratorDegreesOfFreedom: v1, denominatorDegreesOfFreedom: v2 } = input
  const counts = { from: 0.5, to: 1e6 }
  requireRange('fUpperTail', 'f', f, { from: 0, to: 1e300 })
  requireRange('fUpperTail', 'numeratorDegreesOfFreedom', v1, counts)
  requireRange('fUpperTail', 'denominatorDegreesOfFreedom', v2, counts)
  return incompleteBetaRatio({ x: v2 / (v2 + v1 * f), a: v2 / 2, b: v1 / 2 })
}
