import { requireRange } from '../check/require-range.ts'
import {
  type CountedFlatnessBudgetInput,
  countedFlatnessBudget,
  type FlatnessUncertainty,
} from './counted-flatness-budget.ts'
import { expandedResult } from './expanded-result.ts'
import { normalLine } from './normal-line.ts'

/** What lies between the crossings, in bands: what our trials on synthetic faces left. */
export const usualBetweenCrossingsBands = 0.2

/**
 * Gives the uncertainty of a flatness from a grid of lines. Two departures are read, the largest
 * each way, so that their errors combine as those of a saddle's two counts; what lies between the
 * crossings is a line of its own.
 *
 * u^2 = lines of countedFlatnessBudget for two readings + (h betweenCrossingsBands)^2,
 * U = k u with k = max(2, Student's t for 95 %)
 *
 * @param input as countedFlatnessBudget, and betweenCrossingsBands: from 0 to 100 (0.2 when absent)
 * @returns standard and expanded uncertainty in um, coverage factor, effective degrees of freedom
 *   (null for infinitely many) and the lines
 * @throws RangeError outside these ranges
 * Validity: crossings spread over the whole ring. The 0.2 is between the 0.14 and 0.34 band rms that
 *   grids gave on synthetic faces of several forms, reading included: it counts that part twice.
 * Source: JCGM 100:2008 for the rules; 0.2 bands: own trials on synthetic faces, no source.
 * @example lineGridBudget({ bandHeightUm: 0.2938, flatnessUm: 0,
 *   readingHalfWidthBands: 0 }).standardUncertaintyUm // 0.0588
 */
export function lineGridBudget(
  input: Omit<CountedFlatnessBudgetInput, 'isSumOfTwoDirections'> & {
    readonly betweenCrossingsBands?: number
  },
): FlatnessUncertainty {
  const { betweenCrossingsBands: value = usualBetweenCrossingsBands, ...counted } = input
  requireRange('lineGridBudget', 'betweenCrossingsBands', value, { from: 0, to: 100 })
  const read = countedFlatnessBudget({ ...counted, isSumOfTwoDirections: true })
  const between = { source: 'between-crossings', value, sensitivity: input.bandHeightUm }
  const budget = [...read.budget, normalLine(between)]
  const { standardUncertainty, expandedUncertainty, ...how } = expandedResult(budget)
  return {
    standardUncertaintyUm: standardUncertainty,
    expandedUncertaintyUm: expandedUncertainty,
    ...how,
    budget,
  }
}
