import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { decimalDigits } from './decimal-digits.ts'
import { roundCoefficient } from './round-coefficient.ts'
import { shortDecimal } from './short-decimal.ts'

/**
 * Prints a number with a fixed count of decimals, halves away from zero on the digits a person
 * reads. What rounds to zero is printed without a minus sign.
 *
 * @param input value: any finite number; decimals: whole, from 0 to 20
 * @returns text with a decimal point and no thousands mark
 * @throws RangeError when value is not finite or decimals is outside its range
 * Validity: differs from toFixed, which rounds the binary value (1.005 to 1.00).
 * Source: rounding "half away from zero", ISO 80000-1 annex B, rule B (from memory).
 * @example formatFixed({ value: 1.005, decimals: 2 }) // 1.01
 */
export function formatFixed(input: { readonly value: number; readonly decimals: number }): string {
  requireFinite('formatFixed', 'value', input.value)
  const decimals = requireWhole('formatFixed', 'decimals', input.decimals, { from: 0, to: 20 })
  const digits = decimalDigits(shortDecimal(input.value))
  const count = roundCoefficient({ ...digits, unitExponent: -decimals })
  const text = count.toString().padStart(decimals + 1, '0')
  const whole = text.slice(0, text.length - decimals)
  const sign = digits.isNegative && count > 0n ? '-' : ''
  return decimals === 0 ? sign + whole : `${sign}${whole}.${text.slice(-decimals)}`
}
