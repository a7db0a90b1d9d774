import type { BudgetLine } from '../science/uncertainty/budget-line.ts'
import type { MeasurementModel } from '../science/uncertainty/measurement-model.ts'

/** The uncertainty of a result as it is kept with it, in the unit of the result. */
export type Uncertainty = {
  readonly standardUncertainty: number
  readonly expandedUncertainty: number
  readonly coverageFactor: number
  /** Null stands for infinitely many. */
  readonly effectiveDegreesOfFreedom: number | null
  readonly budget: readonly BudgetLine[]
  /** Ids of sources that belong into the budget and were not known: it is then too small. */
  readonly leftOut: readonly string[]
  /** For propagation of distributions; null where there is none. */
  readonly model: MeasurementModel | null
}
