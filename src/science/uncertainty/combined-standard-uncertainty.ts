import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'

/**
 * Gives the combined standard uncertainty of independent sources, in the unit of the result.
 *
 * u = sqrt(sum of contribution^2)
 *
 * @param lines one or more lines of a budget
 * @returns u, in the unit of the contributions
 * @throws RangeError without a line
 * Validity: independent sources and a result that is nearly linear in each.
 * Source: JCGM 100:2008, equation (10).
 * @example combinedStandardUncertainty([{ contribution: 3 }, { contribution: 4 }]) // 5
 */
export function combinedStandardUncertainty(
  lines: readonly Pick<BudgetLine, 'contribution'>[],
): number {
  requireRange('combinedStandardUncertainty', 'count of lines', lines.length, { from: 1, to: 1e6 })
  return Math.hypot(...lines.map((line) => line.contribution))
}
