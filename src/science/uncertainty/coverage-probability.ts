import { requireRange } from '../check/require-range.ts'
import { studentTUpperTail } from '../statistics/student-t-upper-tail.ts'

/**
 * Gives the probability that an expanded uncertainty covers: which interval of a Monte Carlo
 * evaluation it is to be compared with.
 *
 * P = 1 - 2 P(T > k)
 *
 * @param input coverageFactor k: from 0.1 to 1000; effectiveDegreesOfFreedom: from 0.5, fractions
 *   allowed; Infinity for a known uncertainty
 * @returns probability from 0 to 1
 * @throws RangeError outside these ranges
 * Validity: of a result that is distributed as t; for k = 2 and a known uncertainty 95.45 %.
 * Source: JCGM 100:2008, G.3.
 * @example coverageProbability({ coverageFactor: 2.23, effectiveDegreesOfFreedom: 10 }) // 0.950
 */
export function coverageProbability(input: {
  readonly coverageFactor: number
  readonly effectiveDegreesOfFreedom: number
}): number {
  const { coverageFactor: t, effectiveDegreesOfFreedom } = input
  requireRange('coverageProbability', 'coverageFactor', t, { from: 0.1, to: 1000 })
  requireRange('coverageProbability', 'effectiveDegreesOfFreedom', effectiveDegreesOfFreedom, {
    from: 0.5,
    to: Number.POSITIVE_INFINITY,
  })
  const degreesOfFreedom = Math.min(1e6, effectiveDegreesOfFreedom)
  return 1 - 2 * studentTUpperTail({ t, degreesOfFreedom })
}
