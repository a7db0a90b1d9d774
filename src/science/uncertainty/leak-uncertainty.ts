import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'
import { expandedResult } from './expanded-result.ts'

/**
 * Standard uncertainties of what a leak test measures, and steps of its displays; what is absent
 * counts as exact.
 */
export interface LeakInputUncertainties {
  readonly volumeRelative?: number | undefined
  /** Of one reading, without the step of the display where that is given beside it. */
  readonly pressurePa?: number | undefined
  /** Step of the display of the gauge. */
  readonly resolutionPa?: number | undefined
  /** Of one reading, without the step of the display where that is given beside it. */
  readonly temperatureK?: number | undefined
  /** Step of the display of the thermometer. */
  readonly resolutionK?: number | undefined
  /** Of the time from start to end. */
  readonly timeS?: number | undefined
}

/** The same of two single readings, with errors that they are not corrected for, to either side. */
export interface TwoPointUncertainties extends LeakInputUncertainties {
  /** Of the stated volume, as a fraction of it. */
  readonly volumeErrorRelative?: number | undefined
  /** Of the gauge. */
  readonly pressureErrorPa?: number | undefined
  /** Of the thermometer. */
  readonly temperatureErrorK?: number | undefined
}

/** Uncertainty of a leak, with the budget it comes from. */
export interface LeakUncertainty {
  readonly standardUncertaintyPaM3PerS: number
  readonly expandedUncertaintyPaM3PerS: number
  readonly coverageFactor: number
  readonly budget: readonly BudgetLine[]
}

/**
 * Gives standard and expanded uncertainty of a leak from the lines of its budget, in Pa m3/s.
 *
 * u = sqrt(sum of contribution^2), U = k u with k = max(2, Student's t for 95 %)
 *
 * @param budget one or more lines, contributions in Pa m3/s
 * @returns u, U, coverage factor k and the lines
 * @throws RangeError without a line
 * Source: JCGM 100:2008, equations (10) and (G.2b), 6.3.3.
 * @example leakUncertainty([{ source: 'volume', value: 0.02, distribution: 'normal',
 *   sensitivity: 0.5, contribution: 0.01, degreesOfFreedom: null }]).expandedUncertaintyPaM3PerS
 *   // 0.02
 */
export function leakUncertainty(budget: readonly BudgetLine[]): LeakUncertainty {
  requireRange('leakUncertainty', 'count of lines', budget.length, { from: 1, to: 1000 })
  const { standardUncertainty, expandedUncertainty, coverageFactor } = expandedResult(budget)
  return {
    standardUncertaintyPaM3PerS: standardUncertainty,
    expandedUncertaintyPaM3PerS: expandedUncertainty,
    coverageFactor,
    budget,
  }
}
