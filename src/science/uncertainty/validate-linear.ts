import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'

/** Whether the linear budget holds beside a Monte Carlo evaluation, and by how much. */
export interface LinearValidation {
  readonly isValid: boolean
  /** |endpoint of the linear interval - endpoint of the other|, lower and upper. */
  readonly lowDifference: number
  readonly highDifference: number
  /** How far the endpoints may lie apart. */
  readonly tolerance: number
}

/** Two significant digits of u count: what is printed. */
const significantDigits = 2

/**
 * Compares the interval of a linear budget with that of a Monte Carlo evaluation of the same model
 * for the same coverage probability.
 *
 * |y - U - low| <= d and |y + U - high| <= d, with d = 10^l / 2 and u = c x 10^l, c of two digits
 *
 * @param input value y and expandedUncertainty U of the linear budget, U from 0;
 *   standardUncertainty u of the Monte Carlo evaluation, from 1e-300 to 1e300; low and high:
 *   endpoints of its coverage interval; all in one unit
 * @returns whether both endpoints agree, their differences, and the numerical tolerance d
 * @throws RangeError outside these ranges
 * Validity: a million trials settle the endpoints to some 0.005 u. Where u begins with a 9 the
 *   tolerance is 0.005 u too, so that chance decides: run more trials, or look at the differences.
 * Source: JCGM 101:2008, 7.9.2 and 8.1.
 * @example validateLinear({ value: 0, expandedUncertainty: 19.9, standardUncertainty: 10.1,
 *   low: -17, high: 17 }).lowDifference // 2.9
 */
export function validateLinear(input: {
  readonly value: number
  readonly expandedUncertainty: number
  readonly standardUncertainty: number
  readonly low: number
  readonly high: number
}): LinearValidation {
  const { value, expandedUncertainty, standardUncertainty, low, high } = input
  const name = 'validateLinear'
  requireFinite(name, 'value', value)
  requireRange(name, 'expandedUncertainty', expandedUncertainty, { from: 0, to: 1e300 })
  requireRange(name, 'standardUncertainty', standardUncertainty, { from: 1e-300, to: 1e300 })
  requireFinite(name, 'low', low)
  requireFinite(name, 'high', high)
  const lowDifference = Math.abs(value - expandedUncertainty - low)
  const highDifference = Math.abs(value + expandedUncertainty - high)
  // Two digits as printed: 0.0996 is 10 x 10^-2, not 99.6 x 10^-3.
  const [, power = '0'] = standardUncertainty.toExponential(significantDigits - 1).split('e')
  const tolerance = 0.5 * 10 ** (Number(power) - significantDigits + 1)
  const isValid = lowDifference <= tolerance && highDifference <= tolerance
  return { isValid, lowDifference, highDifference, tolerance }
}
