import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import { expandedResult } from '../science/uncertainty/expanded-result.ts'
import type { MeasurementModel } from '../science/uncertainty/measurement-model.ts'
import type { Uncertainty } from './uncertainty.ts'

/**
 * A budget as it is kept with its result: combined, with its effective degrees of freedom and the
 * factor that follows from them.
 * @param budget one line or more, contributions in the unit of the result
 * @param leftOut ids of sources that belong into the budget and were not known
 */
export function asUncertainty(
  budget: readonly BudgetLine[],
  leftOut: readonly string[],
  model: MeasurementModel | null,
): Uncertainty {
  return { ...expandedResult(budget), budget, leftOut, model }
}
