import type { BudgetLine } from './budget-line.ts'
import { combinedStandardUncertainty } from './combined-standard-uncertainty.ts'
import { coverageFactor } from './coverage-factor.ts'
import { effectiveDegreesOfFreedom } from './effective-degrees-of-freedom.ts'

/** What the lines of a budget come to, in the unit of their contributions. */
export interface ExpandedResult {
  readonly standardUncertainty: number
  readonly expandedUncertainty: number
  readonly coverageFactor: number
  /** null stands for infinitely many, which JSON can't say. */
  readonly effectiveDegreesOfFreedom: number | null
}

/** Below half a degree of freedom Student's t has no factor that means anything. */
const fewestDegreesOfFreedom = 0.5

/**
 * Gives standard and expanded uncertainty of a result from the lines of its budget, in the unit of
 * their contributions.
 *
 * u = sqrt(sum of contribution^2), U = k u with k = max(2, Student's t for 95 %)
 *
 * @param budget one or more lines
 * @returns u, U, coverage factor k of 2 or more, and the effective degrees of freedom: null for
 *   infinitely many
 * @throws RangeError without a line
 * Validity: as combinedStandardUncertainty; where every line that counts is well known, k is 2.
 * Source: JCGM 100:2008, equations (10) and (G.2b), 6.3.3 and G.4.
 * @example expandedResult([{ source: 'repeatability', value: 3, distribution: 't',
 *   sensitivity: 1, contribution: 3, degreesOfFreedom: 10 }]).expandedUncertainty // 6.68
 */
export function expandedResult(budget: readonly BudgetLine[]): ExpandedResult {
  const standardUncertainty = combinedStandardUncertainty(budget)
  const effective = effectiveDegreesOfFreedom(budget)
  const factor = coverageFactor(Math.max(fewestDegreesOfFreedom, effective))
  return {
    standardUncertainty,
    expandedUncertainty: factor * standardUncertainty,
    coverageFactor: factor,
    effectiveDegreesOfFreedom: Number.isFinite(effective) ? effective : null,
  }
}
