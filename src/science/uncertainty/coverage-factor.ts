import { requireRange } from '../check/require-range.ts'
import { studentTQuantile } from '../statistics/student-t-quantile.ts'

/** The factor of the shop's expanded uncertainties: about 95 %, JCGM 100:2008, 6.3.3. */
export const usualCoverageFactor = 2

/**
 * Gives the factor from standard to expanded uncertainty for about 95 % coverage.
 *
 * k = max(2, t with probability 0.975 and effectiveDegreesOfFreedom)
 *
 * @param effectiveDegreesOfFreedom from 0.5, fractions allowed; Infinity for a known uncertainty
 * @returns coverage factor, 2 or more
 * @throws RangeError below 0.5 or not a number
 * Validity: never below the usual 2, so that large budgets read like the others.
 * Source: JCGM 100:2008, G.3 and 6.3.3.
 * @example coverageFactor(10) // 2.23
 */
export function coverageFactor(effectiveDegreesOfFreedom: number): number {
  requireRange('coverageFactor', 'effectiveDegreesOfFreedom', effectiveDegreesOfFreedom, {
    from: 0.5,
    to: Number.POSITIVE_INFINITY,
  })
  const degreesOfFreedom = Math.min(1e6, effectiveDegreesOfFreedom)
  return Math.max(usualCoverageFactor, studentTQuantile({ probability: 0.975, degreesOfFreedom }))
}
