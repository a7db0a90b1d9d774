import { requireRange } from '../check/require-range.ts'
import { meanReading } from '../statistics/mean-reading.ts'
import type { BudgetLine } from './budget-line.ts'
import { rectangularLine } from './rectangular-line.ts'
import { type RepeatedReadingInput, repeatedReadingLines } from './repeated-reading-lines.ts'

/** A figure read with an indicator: a total indicator reading, an end play, a height. */
export interface DialReadingInput extends RepeatedReadingInput {
  /** True for a total indicator reading or an end play: the highest reading minus the lowest. */
  readonly isDifference: boolean
  /** Of a lever indicator, between lever and surface; absent or 0 where it reads true. */
  readonly leverAngleDeg?: number | undefined
  /** How far off that angle may be, to either side. */
  readonly leverAngleHalfWidthDeg?: number | undefined
}

/**
 * Gives the uncertainty budget of a figure read with a dial or lever indicator, contributions in
 * um. The figure is dialReadingUm.
 *
 * as repeatedReadingLines with perUm = cos A; alignment
 * (cos A - cos(A + halfWidth)) x mean / sqrt 3
 *
 * @param input as repeatedReadingLines; isDifference; leverAngleDeg A: from 0 to 60;
 *   leverAngleHalfWidthDeg: from 0 to 20
 * @returns lines repeatability (for two readings or more), resolution, calibration, instrument and
 *   alignment (where leverAngleHalfWidthDeg is given); values in um, alignment as a fraction of the
 *   mean; empty when nothing is known
 * @throws RangeError outside these ranges
 * Validity: noise raises the difference of highest and lowest reading of many points above the true
 *   one; that is no line here. A cosine falls faster on one side: the line takes the larger fall to
 *   either side. Where and along which line the indicator stood is not in the budget.
 * Source: JCGM 100:2008, equation (10); a lever reads high by 1 / cos A: geometry.
 * @example dialReadingBudget({ readingsUm: [40], isDifference: true,
 *   standardUncertaintyUm: 3 })[0].contribution // 4.243
 */
export function dialReadingBudget(input: DialReadingInput): BudgetLine[] {
  const name = 'dialReadingBudget'
  const { isDifference, leverAngleDeg = 0, leverAngleHalfWidthDeg } = input
  requireRange(name, 'leverAngleDeg', leverAngleDeg, { from: 0, to: 60 })
  const cosine = (deg: number) => Math.cos((deg * Math.PI) / 180)
  const perUm = cosine(leverAngleDeg)
  const lines = repeatedReadingLines(input, {
    scatterSource: 'repeatability',
    isDifference,
    perUm,
  })
  if (leverAngleHalfWidthDeg === undefined) return lines
  requireRange(name, 'leverAngleHalfWidthDeg', leverAngleHalfWidthDeg, { from: 0, to: 20 })
  const halfWidth = perUm - cosine(leverAngleDeg + leverAngleHalfWidthDeg)
  const sensitivity = meanReading(input.readingsUm).mean
  return [...lines, rectangularLine({ source: 'alignment', halfWidth, sensitivity })]
}
