import { requireFinite } from '../check/require-finite.ts'

const mostDigits = 10
/** As limits forgive it: what binary arithmetic leaves behind a difference of two readings. */
const relativeTolerance = 1e-12

/**
 * Gives the short decimal that a computed number stands for, when there is one, else the number.
 * 271.325 - 268.1 is 3.22499999999997 in binary and 3.225 to everyone who reads it; printed to
 * two decimals the first would say 3.22.
 *
 * the decimal of at most 10 digits within 1e-12 of value, relative
 *
 * @param value any finite number
 * @returns that decimal, or value itself
 * @throws RangeError when value is not finite
 * Source: own rule, the tolerance that comparing with limits has.
 * @example shortDecimal(271.325 - 268.1) // 3.225
 */
export function shortDecimal(value: number): number {
  requireFinite('shortDecimal', 'value', value)
  const near = Number(value.toPrecision(mostDigits))
  return Math.abs(near - value) <= relativeTolerance * Math.abs(value) ? near : value
}
