import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { decimalDigits } from './decimal-digits.ts'
import { roundCoefficient } from './round-coefficient.ts'
import { shortDecimal } from './short-decimal.ts'

/** A result and its uncertainty as they are printed together: (valueText ± U) x 10^power. */
export interface PrintedWithUncertainty {
  readonly valueText: string
  readonly uncertaintyText: string
  /** Decimals of both texts; 0 where the last digit is left of the decimal point. */
  readonly decimals: number
  /** Power of ten that both texts are to be multiplied by; 0 where they stand for themselves. */
  readonly power: number
}

const uncertaintyDigits = 2
/** Digits of a result that is stated as exact. */
const exactDigits = 6
/** Orders of magnitude that are printed plainly; outside them a power of ten is shorter to read. */
const plainOrders = { from: -4, to: 6 }

/**
 * Rounds a result and its expanded uncertainty by one rule: the uncertainty to two significant
 * digits, the result to the same place.
 *
 * Both halves away from zero, as all printing here. The uncertainty is rounded as usual, not up:
 * with two digits that takes away less than 5 % of it.
 *
 * @param input value: from -1e100 to 1e100; expandedUncertainty: 0, for an exact result, or from
 *   1e-100 to 1e100
 * @returns the two texts, their decimals, and a power of ten that is 0 unless the larger of the two
 *   lies outside 0.0001 to 10 million. An exact result has 6 significant digits and the
 *   uncertainty 0. A result that rounds to zero has no minus sign
 * @throws RangeError outside these ranges
 * Validity: left of the decimal point places below the uncertainty are filled with zeros that are
 *   not significant.
 * Source: JCGM 100:2008, 7.2.6.
 * @example formatWithUncertainty({ value: 0.5875618, expandedUncertainty: 0.0713 }).valueText
 *   // 0.588
 */
export function formatWithUncertainty(input: {
  readonly value: number
  readonly expandedUncertainty: number
}): PrintedWithUncertainty {
  const name = 'formatWithUncertainty'
  const value = requireFinite(name, 'value', input.value)
  const uncertainty = requireFinite(name, 'expandedUncertainty', input.expandedUncertainty)
  requireRange(name, 'value', value, { from: -1e100, to: 1e100 })
  if (uncertainty !== 0) {
    requireRange(name, 'expandedUncertainty', uncertainty, { from: 1e-100, to: 1e100 })
  }
  const lastPlace =
    uncertainty === 0
      ? lastPlaceOf(value, exactDigits)
      : lastPlaceOf(uncertainty, uncertaintyDigits)
  const order = Math.max(orderAt(value, lastPlace), orderAt(uncertainty, lastPlace))
  const isPlain = order === lastPlace || (order >= plainOrders.from && order <= plainOrders.to)
  const power = isPlain ? 0 : order
  return {
    valueText: textAt(value, lastPlace, power),
    uncertaintyText: uncertainty === 0 ? '0' : textAt(uncertainty, lastPlace, power),
    decimals: Math.max(0, power - lastPlace),
    power,
  }
}

/** Power of ten of the last of so many significant digits; 0 for the number 0. */
function lastPlaceOf(value: number, digits: number): number {
  const { coefficient, exponent } = decimalDigits(shortDecimal(value))
  if (coefficient === 0n) return 0
  const place = exponent + coefficient.toString().length - digits
  // 0.0996 to two digits is 0.10: the carry moves the place by one.
  const count = roundCoefficient({ coefficient, exponent, unitExponent: place })
  return count.toString().length > digits ? place + 1 : place
}

/** Power of ten of the first digit after rounding; the last place where it rounds to zero. */
function orderAt(value: number, lastPlace: number): number {
  const count = countAt(value, lastPlace)
  return count === 0n ? lastPlace : lastPlace + count.toString().length - 1
}

function countAt(value: number, lastPlace: number): bigint {
  return roundCoefficient({ ...decimalDigits(shortDecimal(value)), unitExponent: lastPlace })
}

function textAt(value: number, lastPlace: number, power: number): string {
  const count = countAt(value, lastPlace)
  const sign = value < 0 && count > 0n ? '-' : ''
  const decimals = power - lastPlace
  const digits = count === 0n ? '0' : count.toString()
  if (decimals <= 0) return sign + (count === 0n ? '0' : digits + '0'.repeat(-decimals))
  const text = digits.padStart(decimals + 1, '0')
  return `${sign}${text.slice(0, -decimals)}.${text.slice(-decimals)}`
}
