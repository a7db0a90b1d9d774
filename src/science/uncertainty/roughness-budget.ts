import { requireRange } from '../check/require-range.ts'
import type { BudgetLine } from './budget-line.ts'
import { normalLine } from './normal-line.ts'
import { type RepeatedReadingInput, repeatedReadingLines } from './repeated-reading-lines.ts'

/** Readings of Ra at places over a surface, and what is known of the instrument. */
export interface RoughnessInput extends RepeatedReadingInput {
  /** Of the specimen that the instrument was set on. */
  readonly referenceStandardUncertaintyUm?: number | undefined
}

/**
 * Gives the uncertainty budget of a roughness Ra, contributions in um. The result is the mean.
 *
 * u^2 = (s / sqrt n)^2 + (d / sqrt 12)^2 + u(calibration)^2 + (a / sqrt 3)^2
 *     + u(reference)^2
 *
 * @param input readingsUm: one or more, from 0 to 1e6; resolutionUm d; largestErrorUm a or
 *   largestErrorRelative a / mean, and standardUncertaintyUm, as repeatedReadingLines;
 *   referenceStandardUncertaintyUm: from 0 to 1e6
 * @returns lines surface (for two readings or more, n - 1 degrees of freedom), resolution,
 *   calibration, instrument and reference; values in um; empty when nothing is known
 * @throws RangeError outside these ranges, and where more than one error of the instrument is given
 * Validity: of the mean over the places read, with one cut-off and one tip. It is not how far one
 *   place may lie from that mean.
 * Source: JCGM 100:2008, equation (10), 4.2.3 and 4.3.7.
 * @example roughnessBudget({ readingsUm: [0.2], largestErrorRelative: 0.1 })[0].contribution
 *   // 0.01155
 */
export function roughnessBudget(input: RoughnessInput): BudgetLine[] {
  const name = 'roughnessBudget'
  const { readingsUm, referenceStandardUncertaintyUm: value } = input
  for (const um of readingsUm) requireRange(name, 'readingsUm', um, { from: 0, to: 1e6 })
  const lines = repeatedReadingLines(input, {
    scatterSource: 'surface',
    isDifference: false,
    perUm: 1,
  })
  if (value === undefined) return lines
  requireRange(name, 'referenceStandardUncertaintyUm', value, { from: 0, to: 1e6 })
  return [...lines, normalLine({ source: 'reference', value, sensitivity: 1 })]
}
