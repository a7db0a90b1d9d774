import { type BudgetLine, budgetLine } from './budget-line.ts'

/**
 * Gives the line of a source whose standard uncertainty is well known, such as one from a
 * calibration certificate.
 *
 * contribution = |sensitivity| x value
 *
 * @param input source: id; value: standard uncertainty, 0 or more, in the unit of the source;
 *   sensitivity: result per unit of the source
 * @returns the line, distribution normal, infinitely many degrees of freedom
 * @throws RangeError outside these ranges
 * Source: JCGM 100:2008, 4.3.3.
 * @example normalLine({ source: 'volume', value: 0.02, sensitivity: 0.5 }).contribution // 0.01
 */
export function normalLine(input: {
  readonly source: string
  readonly value: number
  readonly sensitivity: number
}): BudgetLine {
  return budgetLine({ ...input, distribution: 'normal' })
}
