import { requireRange } from '../check/require-range.ts'
import type { PhotoUncertainty } from '../photo/photo-uncertainty.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import { countedFlatnessBudget } from './counted-flatness-budget.ts'
import type { ThermalBow } from './thermal-bow-line.ts'

const name = 'photoFlatnessBudget'

/**
 * Gives the lines of the uncertainty of a flatness read from a photograph, in um.
 *
 * each part of the reading x h; optical flat, wavelength and bow: as countedFlatnessBudget
 *
 * @param input parts: of the reading, each a standard uncertainty from 0 in bands; bandHeightUm h:
 *   from 0.01 to 100; flatnessUm: from 0 to 1e5; opticalFlatToleranceUm T: from 0 to 100, absent
 *   where it is not known; wavelengthNm: from 200 to 2000; wavelengthHalfWidthNm and
 *   the others: as countedFlatnessBudget, absent where not known
 * @returns the lines; values of photo-… in bands, optical-flat in um, wavelength in nm
 * @throws RangeError outside these ranges
 * Validity: without dirt under the flat and what bends it.
 * Source: JCGM 100:2008 for the rules; parts of the reading: as photoUncertainty.
 * @example photoFlatnessBudget({ parts: { statistical: 0.02, form: 0, edge: 0, perspective: 0,
 *   view: 0, floor: 0.015 }, bandHeightUm: 0.3, flatnessUm: 0.2, wavelengthNm: 600
 *   })[0].contribution // 0.006
 */
export function photoFlatnessBudget(input: {
  readonly parts: PhotoUncertainty
  readonly bandHeightUm: number
  readonly flatnessUm: number
  readonly opticalFlatToleranceUm?: number | undefined
  /** Of its calibration. */
  readonly opticalFlatStandardUncertaintyUm?: number | undefined
  readonly wavelengthNm: number
  readonly wavelengthHalfWidthNm?: number | undefined
  readonly thermal?: ThermalBow | undefined
  readonly flatThermal?: ThermalBow | undefined
}): BudgetLine[] {
  const { parts, ...others } = input
  const { bandHeightUm, flatnessUm, wavelengthNm } = input
  requireRange(name, 'bandHeightUm', bandHeightUm, { from: 0.01, to: 100 })
  requireRange(name, 'flatnessUm', flatnessUm, { from: 0, to: 1e5 })
  requireRange(name, 'wavelengthNm', wavelengthNm, { from: 200, to: 2000 })
  const lines = Object.entries(parts).map(([part, value]) => {
    const source = `photo-${part}`
    return budgetLine({ source, value, distribution: 'normal', sensitivity: bandHeightUm })
  })
  const beside = countedFlatnessBudget({ ...others, isSumOfTwoDirections: false })
  // What the eye does has no part in a photograph, and its view stands among its own parts.
  const ofCounting = ['reading', 'viewing-angle']
  return [...lines, ...beside.budget.filter((line) => !ofCounting.includes(line.source))]
}
