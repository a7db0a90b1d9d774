import { requireRange } from '../check/require-range.ts'
import { meanReading } from '../statistics/mean-reading.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import { normalLine } from './normal-line.ts'
import { rectangularLine } from './rectangular-line.ts'
import { resolutionLine } from './resolution-line.ts'

/** One or more repeats of a figure, and what is known of the instrument; the rest is exact. */
export interface RepeatedReadingInput {
  /** Repeats of the same figure; the result is their mean. */
  readonly readingsUm: readonly number[]
  /** Step of the display, or the part of a graduation that is read. */
  readonly resolutionUm?: number | undefined
  /** Of the instrument, not corrected, to either side: at most one of this and the next. */
  readonly largestErrorUm?: number | undefined
  /** The same as a fraction of the mean. */
  readonly largestErrorRelative?: number | undefined
  /** Of its calibration: how well the error is known, not how large it is. Both may be given. */
  readonly standardUncertaintyUm?: number | undefined
}

/** How a figure comes from its readings. */
export interface FigureOfReadings {
  /** Id of the line of the scatter. */
  readonly scatterSource: 'repeatability' | 'surface'
  /** True where each figure is the difference of two readings of the instrument. */
  readonly isDifference: boolean
  /** Change of the result per um of a figure. */
  readonly perUm: number
}

const name = 'repeatedReadingLines'
const sizes = { from: 0, to: 1e6 } as const

/** What its calibration leaves open. */
function calibrationLines(value: number | undefined, sensitivity: number) {
  if (value === undefined) return []
  requireRange(name, 'standardUncertaintyUm', value, sizes)
  return [normalLine({ source: 'calibration', value, sensitivity })]
}

/** The line of the instrument, from whichever of its errors is known. */
function instrumentLines(input: RepeatedReadingInput, mean: number, perReading: number) {
  const { largestErrorUm, largestErrorRelative } = input
  const knownCount = [largestErrorUm, largestErrorRelative].filter(
    (one) => one !== undefined,
  ).length
  requireRange(name, 'count of errors of the instrument', knownCount, { from: 0, to: 1 })
  const instrument = { source: 'instrument', sensitivity: perReading }
  if (largestErrorRelative !== undefined) {
    requireRange(name, 'largestErrorRelative', largestErrorRelative, { from: 0, to: 1 })
    return [rectangularLine({ ...instrument, halfWidth: largestErrorRelative * Math.abs(mean) })]
  }
  if (largestErrorUm === undefined) return []
  requireRange(name, 'largestErrorUm', largestErrorUm, sizes)
  return [rectangularLine({ ...instrument, halfWidth: largestErrorUm })]
}

/**
 * Gives the lines that every figure read with an instrument has, contributions in um: the scatter
 * of its repeats, the step of the display, the calibration, and the error of the instrument.
 *
 * s / sqrt n, d / sqrt 12, u and a / sqrt 3; the latter three x sqrt 2 for a difference; all x perUm
 *
 * @param input readingsUm: from 1 to 10 000, each from -1e9 to 1e9; resolutionUm d,
 *   largestErrorUm a, standardUncertaintyUm u: from 0 to 1e6; largestErrorRelative a / mean: from 0
 *   to 1; each absent where it is not known
 * @param figure scatterSource; isDifference; perUm: any finite number
 * @returns lines scatterSource (for two readings or more, with n - 1 degrees of freedom),
 *   resolution, calibration and instrument; values in um; empty when nothing is known
 * @throws RangeError outside these ranges, and with more than one error of the instrument
 * Validity: both readings of a difference err each for itself: on the safe side where they lie
 *   close together on the dial. The readings are not corrected for the error of the instrument, so
 *   it stands in the budget beside the uncertainty that it was found with.
 * Source: JCGM 100:2008, 4.2.3, 4.3.7, 6.3.1 note, F.2.2.1, F.2.4.5 and equation (10).
 * @example repeatedReadingLines({ readingsUm: [40], resolutionUm: 10 }, {
 *   scatterSource: 'repeatability', isDifference: true, perUm: 1 })[0].contribution // 4.08
 */
export function repeatedReadingLines(
  input: RepeatedReadingInput,
  figure: FigureOfReadings,
): BudgetLine[] {
  const { readingsUm, resolutionUm } = input
  const { scatterSource, isDifference, perUm } = figure
  for (const um of readingsUm) requireRange(name, 'readingsUm', um, { from: -1e9, to: 1e9 })
  const { mean, standardUncertainty, degreesOfFreedom } = meanReading(readingsUm)
  const perReading = perUm * (isDifference ? Math.SQRT2 : 1)
  const lines: BudgetLine[] = []
  if (standardUncertainty !== null && degreesOfFreedom !== null) {
    lines.push(
      budgetLine({
        source: scatterSource,
        value: standardUncertainty,
        distribution: 't',
        sensitivity: perUm,
        degreesOfFreedom,
      }),
    )
  }
  if (resolutionUm !== undefined) {
    const step = requireRange(name, 'resolutionUm', resolutionUm, sizes)
    lines.push(resolutionLine({ source: 'resolution', step, sensitivity: perReading }))
  }
  return [
    ...lines,
    ...calibrationLines(input.standardUncertaintyUm, perReading),
    ...instrumentLines(input, mean, perReading),
  ]
}
