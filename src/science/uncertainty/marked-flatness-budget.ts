import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'
import { countedFlatnessBudget } from './counted-flatness-budget.ts'
import { normalLine } from './normal-line.ts'
import type { ThermalBow } from './thermal-bow-line.ts'

const name = 'markedFlatnessBudget'

/**
 * Gives the lines of the uncertainty of a flatness fitted to marked bands, in um.
 *
 * marks: U / 2 x h; optical flat, wavelength, viewing angle and bow: as countedFlatnessBudget
 *
 * @param input expandedBands U: of the marks alone, from 0 to 1000 bands; bandHeightUm h: from 0.01
 *   to 100; flatnessUm: from 0 to 1e5; the others as countedFlatnessBudget, absent where not known
 * @returns the lines; value of marks in bands, the others as there
 * @throws RangeError outside these ranges
 * Source: JCGM 100:2008 for the rules; U of the marks: as marksUncertainty.
 * @example markedFlatnessBudget({ expandedBands: 0.4, bandHeightUm: 0.3, flatnessUm: 0.9
 *   })[0].contribution // 0.06
 */
export function markedFlatnessBudget(input: {
  readonly expandedBands: number
  readonly bandHeightUm: number
  readonly flatnessUm: number
  readonly opticalFlatToleranceUm?: number | undefined
  readonly opticalFlatStandardUncertaintyUm?: number | undefined
  readonly wavelengthNm?: number | undefined
  readonly wavelengthHalfWidthNm?: number | undefined
  readonly viewingAngleLimitDeg?: number | undefined
  readonly thermal?: ThermalBow | undefined
  readonly flatThermal?: ThermalBow | undefined
}): BudgetLine[] {
  const { expandedBands, ...others } = input
  requireRange(name, 'expandedBands', expandedBands, { from: 0, to: 1000 })
  const beside = countedFlatnessBudget({ ...others, isSumOfTwoDirections: false })
  const marks = { source: 'marks', value: expandedBands / 2, sensitivity: input.bandHeightUm }
  return [normalLine(marks), ...beside.budget.filter((line) => line.source !== 'reading')]
}
