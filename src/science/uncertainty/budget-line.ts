import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import type { Distribution } from './distributions.ts'

/** One source of uncertainty and what it contributes to the result. */
export interface BudgetLine {
  /** Name of the source as an id; the words for it belong to the view. */
  readonly source: string
  /** Standard uncertainty of the source, in the unit of the source. */
  readonly value: number
  readonly distribution: Distribution
  /** Change of the result per unit of the source. */
  readonly sensitivity: number
  /** |sensitivity| x value, in the unit of the result. */
  readonly contribution: number
  /** null stands for infinitely many, which JSON cannot say. */
  readonly degreesOfFreedom: number | null
}

/**
 * Gives one line of an uncertainty budget with its contribution worked out.
 *
 * contribution = |sensitivity| x value
 *
 * @param input source: id; value: standard uncertainty of the source, 0 or more, in its own unit;
 *   distribution it was taken from; sensitivity: result per unit of the source;
 *   degreesOfFreedom: from 0.5 to 1e9, infinitely many when absent
 * @returns the line; degreesOfFreedom null for infinitely many
 * @throws RangeError outside these ranges
 * Source: JCGM 100:2008, 5.1.2.
 * @example budgetLine({ source: 'time', value: 2, distribution: 'normal',
 *   sensitivity: -3 }).contribution // 6
 */
export function budgetLine(input: {
  readonly source: string
  readonly value: number
  readonly distribution: BudgetLine['distribution']
  readonly sensitivity: number
  readonly degreesOfFreedom?: number
}): BudgetLine {
  const { source, value, distribution, sensitivity, degreesOfFreedom } = input
  requireRange('budgetLine', 'value', value, { from: 0, to: 1e300 })
  requireFinite('budgetLine', 'sensitivity', sensitivity)
  if (degreesOfFreedom !== undefined) {
    requireRange('budgetLine', 'degreesOfFreedom', degreesOfFreedom, { from: 0.5, to: 1e9 })
  }
  return {
    source,
    value,
    distribution,
    sensitivity,
    contribution: Math.abs(sensitivity) * value,
    degreesOfFreedom: degreesOfFreedom ?? null,
  }
}
