import { requireRange } from '../check/require-range.ts'
import type { PhotoUncertainty } from '../photo/photo-uncertainty.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import { rectangularLine } from './rectangular-line.ts'

const name = 'photoFlatnessBudget'

/**
 * Gives the lines of the uncertainty of a flatness read from a photograph, in um.
 *
 * each part of the reading x h, T / sqrt 3, w flatness / wavelength / sqrt 3
 *
 * @param input parts: of the reading, each a standard uncertainty from 0 in bands; bandHeightUm h:
 *   from 0.01 to 100; flatnessUm: from 0 to 1e5; opticalFlatToleranceUm T: from 0 to 100, absent
 *   where it is not known; wavelengthNm: from 200 to 2000; wavelengthHalfWidthNm w: from 0 to 100
 * @returns the lines; values of photo-… in bands, optical-flat in um, wavelength in nm
 * @throws RangeError outside these ranges
 * Validity: without temperature, bending of the flat and dirt under it.
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
  readonly wavelengthNm: number
  readonly wavelengthHalfWidthNm?: number | undefined
}): BudgetLine[] {
  const { parts, bandHeightUm, flatnessUm, opticalFlatToleranceUm, wavelengthNm } = input
  const { wavelengthHalfWidthNm } = input
  requireRange(name, 'bandHeightUm', bandHeightUm, { from: 0.01, to: 100 })
  requireRange(name, 'flatnessUm', flatnessUm, { from: 0, to: 1e5 })
  requireRange(name, 'wavelengthNm', wavelengthNm, { from: 200, to: 2000 })
  const lines = Object.entries(parts).map(([part, value]) => {
    const source = `photo-${part}`
    return budgetLine({ source, value, distribution: 'normal', sensitivity: bandHeightUm })
  })
  if (opticalFlatToleranceUm !== undefined) {
    requireRange(name, 'opticalFlatToleranceUm', opticalFlatToleranceUm, { from: 0, to: 100 })
    const halfWidth = opticalFlatToleranceUm
    lines.push(rectangularLine({ source: 'optical-flat', halfWidth, sensitivity: 1 }))
  }
  if (wavelengthHalfWidthNm !== undefined) {
    requireRange(name, 'wavelengthHalfWidthNm', wavelengthHalfWidthNm, { from: 0, to: 100 })
    const halfWidth = wavelengthHalfWidthNm
    const sensitivity = flatnessUm / wavelengthNm
    lines.push(rectangularLine({ source: 'wavelength', halfWidth, sensitivity }))
  }
  return lines
}
