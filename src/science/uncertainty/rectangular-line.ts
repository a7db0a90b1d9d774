import { requireRange } from '../check/require-range.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'

/**
 * Gives the line of a source of which only a limit to either side is known.
 *
 * value = halfWidth / sqrt 3
 *
 * @param input source: id; halfWidth: from 0 to 1e300, in the unit of the source; sensitivity:
 *   result per unit of the source
 * @returns the line, distribution rectangular, infinitely many degrees of freedom
 * @throws RangeError outside these ranges
 * Validity: every value between the limits is as likely as another.
 * Source: JCGM 100:2008, 4.3.7.
 * @example rectangularLine({ source: 'optical-flat', halfWidth: 0.025,
 *   sensitivity: 1 }).contribution // 0.01443
 */
export function rectangularLine(input: {
  readonly source: string
  readonly halfWidth: number
  readonly sensitivity: number
}): BudgetLine {
  const { source, halfWidth, sensitivity } = input
  requireRange('rectangularLine', 'halfWidth', halfWidth, { from: 0, to: 1e300 })
  return budgetLine({
    source,
    value: halfWidth / Math.sqrt(3),
    distribution: 'rectangular',
    sensitivity,
  })
}
