import { requireFinite } from '../check/require-finite.ts'

/** Forgiven relative excess: far above the rounding of doubles, far below any measurement. */
const forgivenRelative = 1e-12

/**
 * Says whether a value is at most a limit. The one place where limits are compared.
 *
 * value - limit <= 1e-12 x max(|value|, |limit|)
 *
 * @param input value, limit: finite numbers in the same unit, unrounded
 * @returns true when the value keeps the limit
 * @throws RangeError when one of them is not finite
 * Validity: forgives the rounding of the computer only: (3 x 587.6) / 2000 keeps 0.8814.
 * Source: own rule.
 * @example atMost({ value: (3 * 587.6) / 2000, limit: 0.8814 }) // true
 */
export function atMost(input: { readonly value: number; readonly limit: number }): boolean {
  const value = requireFinite('atMost', 'value', input.value)
  const limit = requireFinite('atMost', 'limit', input.limit)
  return value - limit <= forgivenRelative * Math.max(Math.abs(value), Math.abs(limit))
}
