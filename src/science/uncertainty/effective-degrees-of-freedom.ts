import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'
import { combinedStandardUncertainty } from './combined-standard-uncertainty.ts'

/**
 * Gives the effective degrees of freedom of a combined standard uncertainty.
 *
 * v = u^4 / sum of (contribution^4 / degreesOfFreedom)
 *
 * @param lines one or more lines of a budget
 * @returns degrees of freedom, not rounded; Infinity when no line has a finite count
 * @throws RangeError without a line
 * Source: Welch-Satterthwaite formula, JCGM 100:2008, equation (G.2b).
 * @example effectiveDegreesOfFreedom([{ contribution: 0.25, degreesOfFreedom: 9 }, {
 *   contribution: 0.57, degreesOfFreedom: 4 }, { contribution: 0.82, degreesOfFreedom: 14 }])
 *   // 19.0
 */
export function effectiveDegreesOfFreedom(
  lines: readonly Pick<BudgetLine, 'contribution' | 'degreesOfFreedom'>[],
): number {
  requireRange('effectiveDegreesOfFreedom', 'count of lines', lines.length, { from: 1, to: 1e6 })
  const combined = combinedStandardUncertainty(lines)
  let sum = 0
  for (const { contribution, degreesOfFreedom } of lines) {
    if (degreesOfFreedom !== null && contribution > 0) {
      sum += (contribution / combined) ** 4 / degreesOfFreedom
    }
  }
  return 1 / sum
}
