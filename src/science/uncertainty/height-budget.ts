import { requireRange } from '../check/require-range.ts'
import { meanReading } from '../statistics/mean-reading.ts'
import type { BudgetLine } from './budget-line.ts'
import { normalLine } from './normal-line.ts'
import { rectangularLine } from './rectangular-line.ts'
import { type RepeatedReadingInput, repeatedReadingLines } from './repeated-reading-lines.ts'

/** Readings of a height, and what is known of how it was read. */
export interface HeightInput extends RepeatedReadingInput {
  /** Of what the instrument was set on: a gauge block, a setting ring, its own zero. */
  readonly settingStandardUncertaintyUm?: number | undefined
  readonly temperature?:
    | {
        /** How far the part may be from the temperature its height is stated for. */
        readonly halfWidthK: number
        /** Of the part; less that of the setting piece where both are equally warm. */
        readonly expansionPerK: number
      }
    | undefined
  /** By how much the table, or the anvils, may be off flat and parallel, to either side. */
  readonly alignmentHalfWidthUm?: number | undefined
}

/**
 * Gives the uncertainty budget of a height, contributions in um. The result is the mean.
 *
 * u^2 = (s / sqrt n)^2 + (d / sqrt 12)^2 + u(calibration)^2 + (a / sqrt 3)^2
 *     + u(setting)^2 + (alpha x mean x dT / sqrt 3)^2 + (f / sqrt 3)^2
 *
 * @param input readingsUm, resolutionUm d, largestErrorUm a or
 *   largestErrorRelative, standardUncertaintyUm u(calibration): as repeatedReadingLines;
 *   settingStandardUncertaintyUm: from 0 to 1e6; temperature: halfWidthK dT from 0 to 100,
 *   expansionPerK alpha from -1e-3 to 1e-3; alignmentHalfWidthUm f: from 0 to 1e6
 * @returns lines repeatability (for two readings or more, n - 1 degrees of freedom), resolution,
 *   calibration, instrument, setting, temperature and alignment; values in um, temperature in K;
 *   empty when nothing is known
 * @throws RangeError outside these ranges
 * Validity: expansion of the height that is read, not of frame or stand.
 * Source: JCGM 100:2008, equation (10) and 4.3.7; the manner of its example H.1.
 * @example heightBudget({ readingsUm: [25000], temperature: { halfWidthK: 2,
 *   expansionPerK: 4e-6 } })[0].contribution // 0.1155
 */
export function heightBudget(input: HeightInput): BudgetLine[] {
  const name = 'heightBudget'
  const { settingStandardUncertaintyUm, temperature, alignmentHalfWidthUm } = input
  const lines = repeatedReadingLines(input, {
    scatterSource: 'repeatability',
    isDifference: false,
    perUm: 1,
  })
  const sizes = { from: 0, to: 1e6 }
  if (settingStandardUncertaintyUm !== undefined) {
    const value = settingStandardUncertaintyUm
    requireRange(name, 'settingStandardUncertaintyUm', value, sizes)
    lines.push(normalLine({ source: 'setting', value, sensitivity: 1 }))
  }
  if (temperature !== undefined) {
    const { halfWidthK: halfWidth, expansionPerK } = temperature
    requireRange(name, 'halfWidthK', halfWidth, { from: 0, to: 100 })
    requireRange(name, 'expansionPerK', expansionPerK, { from: -1e-3, to: 1e-3 })
    const sensitivity = -expansionPerK * meanReading(input.readingsUm).mean
    lines.push(rectangularLine({ source: 'temperature', halfWidth, sensitivity }))
  }
  if (alignmentHalfWidthUm !== undefined) {
    const halfWidth = requireRange(name, 'alignmentHalfWidthUm', alignmentHalfWidthUm, sizes)
    lines.push(rectangularLine({ source: 'alignment', halfWidth, sensitivity: 1 }))
  }
  return lines
}
