import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { incompleteBetaRatio } from './incomplete-beta-ratio.ts'

/**
 * Gives the probability that Student's t exceeds a value.
 *
 * P(T > t) = I_x(v / 2, 1 / 2) / 2 with x = v / (v + t^2), mirrored for t < 0
 *
 * @param input t: any finite number; degreesOfFreedom v: from 0.5 to 1e6, fractions allowed
 * @returns probability from 0 to 1
 * @throws RangeError outside these ranges
 * Source: Abramowitz and Stegun 26.7.1 (from memory, checked against the closed forms for 1 and 2
 *   degrees of freedom).
 * @example studentTUpperTail({ t: 2.228139, degreesOfFreedom: 10 }) // 0.0250
 */
export function studentTUpperTail(input: {
  readonly t: number
  readonly degreesOfFreedom: number
}): number {
  const t = requireFinite('studentTUpperTail', 't', input.t)
  const v = requireRange('studentTUpperTail', 'degreesOfFreedom', input.degreesOfFreedom, {
    from: 0.5,
    to: 1e6,
  })
  const half = incompleteBetaRatio({ x: v / (v + t * t), a: v / 2, b: 0.5 }) / 2
  return t >= 0 ? half : 1 - half
}
