import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { budgetLine } from '../../src/science/uncertainty/budget-line.ts'

/** A standard uncertainty with k = 2, of two sources that contribute as 4 to 3: the larger first. */
export function buildUncertainty(
  standardUncertainty: number,
  changes: Partial<Uncertainty> = {},
): Uncertainty {
  const line = (source: string, share: number) =>
    budgetLine({
      source,
      value: share * standardUncertainty,
      distribution: 'normal',
      sensitivity: 1,
    })
  return {
    standardUncertainty,
    expandedUncertainty: 2 * standardUncertainty,
    coverageFactor: 2,
    effectiveDegreesOfFreedom: null,
    budget: [line('reading', 0.8), line('optical-flat', 0.6)],
    leftOut: [],
    model: null,
    ...changes,
  }
}
