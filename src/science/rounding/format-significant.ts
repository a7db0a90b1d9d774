import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { decimalDigits } from './decimal-digits.ts'
import { roundCoefficient } from './round-coefficient.ts'
import { shortDecimal } from './short-decimal.ts'

/** Powers of ten printed plainly; outside them the exponent form is shorter to read. */
const plainExponents = { from: -4, to: 6 }

/**
 * Prints a number with a count of significant digits, halves away from zero on the digits a
 * person reads: plainly from 0.0001 to below 10 million, else in the form 9.433e-6.
 *
 * @param input value: any finite number; digits: whole, from 1 to 17
 * @returns text with a decimal point and no thousands mark; zero is printed as 0
 * @throws RangeError when value is not finite or digits is outside its range
 * Validity: above its digits a whole number is filled with zeros that are not significant.
 * Source: rounding "half away from zero", ISO 80000-1 annex B, rule B (from memory).
 * @example formatSignificant({ value: 0.0229921, digits: 4 }) // 0.02299
 */
export function formatSignificant(input: {
  readonly value: number
  readonly digits: number
}): string {
  requireFinite('formatSignificant', 'value', input.value)
  const digits = requireWhole('formatSignificant', 'digits', input.digits, { from: 1, to: 17 })
  const { isNegative, coefficient, exponent } = decimalDigits(shortDecimal(input.value))
  if (coefficient === 0n) return '0'
  const unitExponent = exponent + coefficient.toString().length - digits
  // Rounding 9.996 to three digits gives 1000 of its units: one digit more, the last a zero.
  let text = roundCoefficient({ coefficient, exponent, unitExponent }).toString()
  const power = unitExponent + text.length - 1
  text = text.slice(0, digits)
  const sign = isNegative ? '-' : ''
  if (power < plainExponents.from || power > plainExponents.to) {
    return `${sign}${text.slice(0, 1)}${digits > 1 ? `.${text.slice(1)}` : ''}e${power}`
  }
  if (power < 0) return `${sign}0.${'0'.repeat(-power - 1)}${text}`
  const whole = text.slice(0, power + 1).padEnd(power + 1, '0')
  const fraction = text.slice(power + 1)
  return fraction === '' ? sign + whole : `${sign}${whole}.${fraction}`
}
