import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import { combinedStandardUncertainty } from './combined-standard-uncertainty.ts'
import { usualCoverageFactor } from './coverage-factor.ts'

/** Uncertainty of a flatness figure, with the budget it comes from. */
export interface FlatnessUncertainty {
  readonly standardUncertaintyUm: number
  readonly expandedUncertaintyUm: number
  readonly coverageFactor: number
  readonly budget: readonly BudgetLine[]
}

/** What is known about the reading; what is absent is left out of the budget. */
export interface CountedFlatnessBudgetInput {
  readonly bandHeightUm: number
  readonly flatnessUm: number
  /** True for a saddle: two readings are added, so their errors combine. */
  readonly isSumOfTwoDirections: boolean
  readonly readingHalfWidthBands?: number | undefined
  readonly repeatability?:
    | { readonly standardDeviationBands: number; readonly count: number }
    | undefined
  readonly opticalFlatToleranceUm?: number | undefined
  readonly viewingAngleLimitDeg?: number | undefined
  readonly thermal?: ThermalBow | undefined
}

/** A temperature difference through a ring or flat and what it does to it. */
export interface ThermalBow {
  readonly deltaK: number
  readonly expansionPerK: number
  readonly diameterMm: number
  readonly thicknessMm: number
}

const name = 'countedFlatnessBudget'

/** A quarter of a band: what a shop reading by eye resolves (common practice, no source). */
export const usualReadingHalfWidthBands = 0.25

function rectangular(source: string, halfWidth: number, sensitivity: number): BudgetLine {
  const value = halfWidth / Math.sqrt(3)
  return budgetLine({ source, value, distribution: 'rectangular', sensitivity })
}

function readingLines(input: CountedFlatnessBudgetInput): BudgetLine[] {
  const { readingHalfWidthBands = usualReadingHalfWidthBands, repeatability } = input
  requireRange(name, 'readingHalfWidthBands', readingHalfWidthBands, { from: 0, to: 100 })
  const umPerBand = input.bandHeightUm * (input.isSumOfTwoDirections ? Math.SQRT2 : 1)
  const lines = [rectangular('reading', readingHalfWidthBands, umPerBand)]
  if (repeatability !== undefined) {
    const { standardDeviationBands, count } = repeatability
    requireRange(name, 'standardDeviationBands', standardDeviationBands, { from: 0, to: 100 })
    requireWhole(name, 'repeatability count', count, { from: 2, to: 1e6 })
    lines.push(
      budgetLine({
        source: 'repeatability',
        value: standardDeviationBands / Math.sqrt(count),
        distribution: 'normal',
        sensitivity: umPerBand,
        degreesOfFreedom: count - 1,
      }),
    )
  }
  return lines
}

function thermalLine(thermal: ThermalBow): BudgetLine {
  const { deltaK, expansionPerK, diameterMm, thicknessMm } = thermal
  requireRange(name, 'deltaK', deltaK, { from: -1000, to: 1000 })
  requireRange(name, 'expansionPerK', expansionPerK, { from: -1e-3, to: 1e-3 })
  requireRange(name, 'diameterMm', diameterMm, { from: 0.1, to: 10_000 })
  requireRange(name, 'thicknessMm', thicknessMm, { from: 0.1, to: 10_000 })
  const umPerK = ((expansionPerK * diameterMm * diameterMm) / (8 * thicknessMm)) * 1000
  return rectangular('thermal-bow', Math.abs(deltaK), umPerK)
}

/**
 * Gives the uncertainty budget of a counted flatness reading, in um.
 *
 * u^2 = (a h / sqrt 3)^2 + (s h / sqrt n)^2 + (T / sqrt 3)^2
 *     + ((1 / cos L - 1) flatness / sqrt 3)^2 + (alpha dT D^2 / (8 t) / sqrt 3)^2, U = 2 u
 *
 * @param input bandHeightUm h: from 0.01 to 100; flatnessUm: from 0 to 1e5; isSumOfTwoDirections:
 *   true for a saddle, whose two readings combine in quadrature; readingHalfWidthBands a: from 0 to
 *   100 (0.25 when absent); repeatability: standard deviation s of one reading (0 to 100 bands) and
 *   count n averaged (2 or more); opticalFlatToleranceUm T: from 0 to 100; viewingAngleLimitDeg L:
 *   largest angle the eye may have had, from 0 to 80; thermal: deltaK dT through the thickness
 *   (-1000 to 1000), expansionPerK alpha, diameterMm D and thicknessMm t (0.1 to 10000)
 * @returns standard and expanded uncertainty in um, coverage factor 2, and the lines. Units of
 *   value: reading and repeatability in bands, optical-flat in um, viewing-angle as a fraction,
 *   thermal-bow in K
 * @throws RangeError outside these ranges
 * Validity: of what the count can see; it says nothing about lobes between the directions read.
 *   The factor is 2 whatever the degrees of freedom of the repeatability.
 * Source: JCGM 100:2008 for the rules; sizes are the shop's own entries; bow of a plate with a
 *   temperature difference through it: own derivation.
 * @example countedFlatnessBudget({ bandHeightUm: 0.2938, flatnessUm: 0,
 *   isSumOfTwoDirections: false }).standardUncertaintyUm // 0.0424
 */
export function countedFlatnessBudget(input: CountedFlatnessBudgetInput): FlatnessUncertainty {
  const { opticalFlatToleranceUm, viewingAngleLimitDeg, thermal } = input
  requireRange(name, 'bandHeightUm', input.bandHeightUm, { from: 0.01, to: 100 })
  requireRange(name, 'flatnessUm', input.flatnessUm, { from: 0, to: 1e5 })
  const budget = readingLines(input)
  if (opticalFlatToleranceUm !== undefined) {
    requireRange(name, 'opticalFlatToleranceUm', opticalFlatToleranceUm, { from: 0, to: 100 })
    budget.push(rectangular('optical-flat', opticalFlatToleranceUm, 1))
  }
  if (viewingAngleLimitDeg !== undefined) {
    requireRange(name, 'viewingAngleLimitDeg', viewingAngleLimitDeg, { from: 0, to: 80 })
    const excess = 1 / Math.cos((viewingAngleLimitDeg * Math.PI) / 180) - 1
    budget.push(rectangular('viewing-angle', excess, input.flatnessUm))
  }
  if (thermal !== undefined) budget.push(thermalLine(thermal))
  const standardUncertaintyUm = combinedStandardUncertainty(budget)
  return {
    standardUncertaintyUm,
    expandedUncertaintyUm: usualCoverageFactor * standardUncertaintyUm,
    coverageFactor: usualCoverageFactor,
    budget,
  }
}
