import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'
import { rectangularLine } from './rectangular-line.ts'

/**
 * Gives the line of a reading that a display or scale rounds to its step.
 *
 * value = step / sqrt 12
 *
 * @param input source: id; step d: from 0 to 1e300, in the unit of the source; sensitivity: result
 *   per unit of the source
 * @returns the line, distribution rectangular, infinitely many degrees of freedom
 * @throws RangeError outside these ranges
 * Validity: one reading, rounded to the nearest step. Readings of a display that stands still
 *   share one error of half a step, so averaging them makes it no smaller.
 * Source: JCGM 100:2008, F.2.2.1.
 * @example resolutionLine({ source: 'resolution', step: 1, sensitivity: 1 }).contribution // 0.2887
 */
export function resolutionLine(input: {
  readonly source: string
  readonly step: number
  readonly sensitivity: number
}): BudgetLine {
  const { source, step, sensitivity } = input
  requireRange('resolutionLine', 'step', step, { from: 0, to: 1e300 })
  return rectangularLine({ source, halfWidth: step / 2, sensitivity })
}
