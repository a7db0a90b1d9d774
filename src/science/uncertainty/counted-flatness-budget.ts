import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import { expandedResult } from './expanded-result.ts'
import { normalLine } from './normal-line.ts'
import { rectangularLine } from './rectangular-line.ts'
import { type ThermalBow, thermalBowLine } from './thermal-bow-line.ts'

/** Uncertainty of a flatness figure, with the budget it comes from. */
export interface FlatnessUncertainty {
  readonly standardUncertaintyUm: number
  readonly expandedUncertaintyUm: number
  readonly coverageFactor: number
  /** null stands for infinitely many, which JSON can't say. */
  readonly effectiveDegreesOfFreedom: number | null
  readonly budget: readonly BudgetLine[]
}

/** How far counts of the same bands scatter. */
export interface BandRepeatability {
  /** Of one count. */
  readonly standardDeviationBands: number
  /** How many counts the reading is the mean of. */
  readonly count: number
  /** That the deviation was found with; absent where it is one of the method, known beforehand. */
  readonly degreesOfFreedom?: number | undefined
}

/** What is known about the reading; what is absent is left out of the budget. */
export interface CountedFlatnessBudgetInput {
  readonly bandHeightUm: number
  readonly flatnessUm: number
  /** True for a saddle: two readings are added, so their errors combine. */
  readonly isSumOfTwoDirections: boolean
  readonly readingHalfWidthBands?: number | undefined
  readonly repeatability?: BandRepeatability | undefined
  readonly opticalFlatToleranceUm?: number | undefined
  /** Of its calibration: how well its departure from flat is known. */
  readonly opticalFlatStandardUncertaintyUm?: number | undefined
  /** With its half width: how well the lamp is known. */
  readonly wavelengthNm?: number | undefined
  readonly wavelengthHalfWidthNm?: number | undefined
  readonly viewingAngleLimitDeg?: number | undefined
  /** Of the part. */
  readonly thermal?: ThermalBow | undefined
  readonly flatThermal?: ThermalBow | undefined
}

const name = 'countedFlatnessBudget'

/** A quarter of a band: what a shop reading by eye resolves (common practice, no source). */
export const usualReadingHalfWidthBands = 0.25

function readingLines(input: CountedFlatnessBudgetInput): BudgetLine[] {
  const { readingHalfWidthBands = usualReadingHalfWidthBands, repeatability } = input
  requireRange(name, 'readingHalfWidthBands', readingHalfWidthBands, { from: 0, to: 100 })
  const sensitivity = input.bandHeightUm * (input.isSumOfTwoDirections ? Math.SQRT2 : 1)
  const reading = { source: 'reading', halfWidth: readingHalfWidthBands, sensitivity }
  if (repeatability === undefined) return [rectangularLine(reading)]
  const { standardDeviationBands, count, degreesOfFreedom } = repeatability
  const isKnownBeforehand = degreesOfFreedom === undefined
  requireRange(name, 'standardDeviationBands', standardDeviationBands, { from: 0, to: 100 })
  requireWhole(name, 'repeatability count', count, { from: isKnownBeforehand ? 2 : 1, to: 1e6 })
  if (!isKnownBeforehand) {
    requireRange(name, 'degreesOfFreedom', degreesOfFreedom, { from: 1, to: 1e6 })
  }
  const scatter = {
    source: 'repeatability',
    value: standardDeviationBands / Math.sqrt(count),
    sensitivity,
    ...(isKnownBeforehand
      ? ({ distribution: 'normal' } as const)
      : ({ distribution: 't', degreesOfFreedom } as const)),
  }
  return [rectangularLine(reading), budgetLine(scatter)]
}

function opticsLines(input: CountedFlatnessBudgetInput): BudgetLine[] {
  const { flatnessUm, wavelengthNm, wavelengthHalfWidthNm } = input
  const { opticalFlatToleranceUm, opticalFlatStandardUncertaintyUm } = input
  const lines: BudgetLine[] = []
  if (opticalFlatToleranceUm !== undefined) {
    requireRange(name, 'opticalFlatToleranceUm', opticalFlatToleranceUm, { from: 0, to: 100 })
    const halfWidth = opticalFlatToleranceUm
    lines.push(rectangularLine({ source: 'optical-flat', halfWidth, sensitivity: 1 }))
  }
  if (opticalFlatStandardUncertaintyUm !== undefined) {
    const value = opticalFlatStandardUncertaintyUm
    requireRange(name, 'opticalFlatStandardUncertaintyUm', value, { from: 0, to: 100 })
    lines.push(normalLine({ source: 'optical-flat-calibration', value, sensitivity: 1 }))
  }
  if (wavelengthHalfWidthNm !== undefined) {
    const middleNm = wavelengthNm ?? Number.NaN
    requireRange(name, 'wavelengthNm', middleNm, { from: 200, to: 2000 })
    requireRange(name, 'wavelengthHalfWidthNm', wavelengthHalfWidthNm, { from: 0, to: 100 })
    const sensitivity = flatnessUm / middleNm
    const halfWidth = wavelengthHalfWidthNm
    lines.push(rectangularLine({ source: 'wavelength', halfWidth, sensitivity }))
  }
  if (input.viewingAngleLimitDeg !== undefined) {
    requireRange(name, 'viewingAngleLimitDeg', input.viewingAngleLimitDeg, { from: 0, to: 80 })
    const halfWidth = 1 / Math.cos((input.viewingAngleLimitDeg * Math.PI) / 180) - 1
    lines.push(rectangularLine({ source: 'viewing-angle', halfWidth, sensitivity: flatnessUm }))
  }
  return lines
}

/**
 * Gives the uncertainty budget of a counted flatness reading, in um.
 *
 * u^2 = (a h / sqrt 3)^2 + (s h / sqrt n)^2 + (T / sqrt 3)^2 + u(T)^2
 *     + (w flatness / wavelength / sqrt 3)^2
 *     + ((1 / cos L - 1) flatness / sqrt 3)^2 + (alpha dT D^2 / (8 t) / sqrt 3)^2 of part and flat,
 * U = k u with k = max(2, Student's t for 95 %)
 *
 * @param input bandHeightUm h: from 0.01 to 100; flatnessUm: from 0 to 1e5; isSumOfTwoDirections:
 *   true for a saddle, whose two readings combine in quadrature; readingHalfWidthBands a: from 0 to
 *   100 (0.25 when absent); repeatability: standard deviation s of one count (0 to 100 bands), count
 *   n averaged (2 or more; 1 or more with degreesOfFreedom), degreesOfFreedom that s was found with
 *   (1 to 1e6; absent for one of the method, known beforehand); opticalFlatToleranceUm T and
 *   opticalFlatStandardUncertaintyUm u(T): from 0 to 100; wavelengthHalfWidthNm w: from 0 to 100,
 *   with wavelengthNm from 200 to 2000; viewingAngleLimitDeg L: largest angle the eye may have had,
 *   from 0 to 80; thermal of the part and flatThermal: as thermalBowLine
 * @returns standard and expanded uncertainty in um, coverage factor, effective degrees of freedom
 *   (null for infinitely many) and the lines. Units of value: reading and repeatability in bands,
 *   optical-flat and optical-flat-calibration in um, wavelength in nm, viewing-angle as a fraction,
 *   thermal-bow and thermal-bow-of-flat in K
 * @throws RangeError outside these ranges
 * Validity: of what the count can see; it says nothing about lobes between the directions read. An
 *   oblique eye can only make the figure too small: the line takes the excess to either side.
 * Source: JCGM 100:2008 for the rules; sizes are the shop's own entries; bow of a plate with a
 *   temperature difference through it: own derivation.
 * @example countedFlatnessBudget({ bandHeightUm: 0.2938, flatnessUm: 0,
 *   isSumOfTwoDirections: false }).standardUncertaintyUm // 0.0424
 */
export function countedFlatnessBudget(input: CountedFlatnessBudgetInput): FlatnessUncertainty {
  const { thermal, flatThermal } = input
  requireRange(name, 'bandHeightUm', input.bandHeightUm, { from: 0.01, to: 100 })
  requireRange(name, 'flatnessUm', input.flatnessUm, { from: 0, to: 1e5 })
  const budget = [
    ...readingLines(input),
    ...opticsLines(input),
    ...(thermal === undefined ? [] : [thermalBowLine('thermal-bow', thermal)]),
    ...(flatThermal === undefined ? [] : [thermalBowLine('thermal-bow-of-flat', flatThermal)]),
  ]
  const { standardUncertainty, expandedUncertainty, ...how } = expandedResult(budget)
  return {
    standardUncertaintyUm: standardUncertainty,
    expandedUncertaintyUm: expandedUncertainty,
    ...how,
    budget,
  }
}
