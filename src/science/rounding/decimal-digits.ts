import { requireFinite } from '../check/require-finite.ts'

/** A decimal number: (-1 if isNegative) x coefficient x 10^exponent. */
export interface DecimalDigits {
  readonly isNegative: boolean
  readonly coefficient: bigint
  readonly exponent: number
}

/**
 * Gives the shortest decimal digits that name a double: what a person typed or would read, not
 * the binary value behind it (1.005 is 1005 x 10^-3, not 1.00499999999999989...).
 *
 * @param value any finite number
 * @returns sign, whole coefficient and power of ten; zero (and -0) is not negative
 * @throws RangeError when value is not finite
 * Source: ECMA-262, Number::toString, shortest digits.
 * @example decimalDigits(1.005).coefficient // 1005
 */
export function decimalDigits(value: number): DecimalDigits {
  requireFinite('decimalDigits', 'value', value)
  const [mantissa = '0', power = '0'] = Math.abs(value).toExponential().split('e')
  const [whole = '0', fraction = ''] = mantissa.split('.')
  return {
    isNegative: value < 0,
    coefficient: BigInt(whole + fraction),
    exponent: Number(power) - fraction.length,
  }
}
