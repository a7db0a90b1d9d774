import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { type GlobalRisk, type GlobalRiskLimits, globalRisk } from './global-risk.ts'

/** Beyond so many standard deviations a normal prior holds nothing that a double could count. */
const reach = 10

/**
 * Gives the risks of accepting many items whose values scatter normally.
 *
 * globalRisk with g normal about mean with standardDeviation
 *
 * @param input mean: finite; standardDeviation: above 0, of the items themselves;
 *   measurementUncertainty: above 0; limits: finite; all in one unit
 * @returns both risks and the share of good items, each from 0 to 1
 * @throws RangeError when a number is out of range
 * Validity: about 10 digits; the prior has to be known, from many items of the same making.
 * Source: JCGM 106:2012, clause 9 (from memory).
 * @example globalRiskNormal({ mean: 0, standardDeviation: 0.12, measurementUncertainty: 0.04,
 *   limits: { lowerLimit: -0.2, upperLimit: 0.2, lowerAcceptanceLimit: -0.2,
 *   upperAcceptanceLimit: 0.2 } }).falseAcceptRisk // 0.018942
 */
export function globalRiskNormal(input: {
  readonly mean: number
  readonly standardDeviation: number
  readonly measurementUncertainty: number
  readonly limits: GlobalRiskLimits
}): GlobalRisk {
  const mean = requireFinite('globalRiskNormal', 'mean', input.mean)
  const s = requireRange('globalRiskNormal', 'standardDeviation', input.standardDeviation, {
    from: Number.MIN_VALUE,
    to: Number.MAX_VALUE,
  })
  const knots = Array.from({ length: 2 * reach + 1 }, (_, index) => mean + (index - reach) * s)
  const density = (x: number) =>
    Math.exp(-(((x - mean) / s) ** 2) / 2) / (s * Math.sqrt(2 * Math.PI))
  return globalRisk({ ...input, density, knots })
}
