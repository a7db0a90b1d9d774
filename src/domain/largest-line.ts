import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import type { Uncertainty } from './uncertainty.ts'

/** The line that contributes most: what would have to improve. */
export type LargestLine = {
  readonly line: BudgetLine
  /** Of the variance, from 0 to 1: what would be gone if this source were. */
  readonly varianceShare: number
}

/** Null where nothing contributes anything. */
export function largestLine(
  uncertainty: Pick<Uncertainty, 'budget' | 'standardUncertainty'>,
): LargestLine | null {
  const { budget, standardUncertainty } = uncertainty
  const line = budget.reduce<BudgetLine | null>(
    (largest, one) => (one.contribution > (largest?.contribution ?? 0) ? one : largest),
    null,
  )
  if (line === null || standardUncertainty === 0) return null
  return { line, varianceShare: (line.contribution / standardUncertainty) ** 2 }
}
