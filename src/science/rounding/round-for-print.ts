import { formatFixed } from './format-fixed.ts'

/**
 * Rounds a number to a fixed count of decimals, halves away from zero on the digits a person
 * reads. The one rounding function: results are stored unrounded and rounded when printed.
 *
 * @param input value: any finite number; decimals: whole, from 0 to 20
 * @returns the rounded number; never -0
 * @throws RangeError when value is not finite or decimals is outside its range
 * Source: rounding "half away from zero", ISO 80000-1 annex B, rule B (from memory).
 * @example roundForPrint({ value: -2.5, decimals: 0 }) // -3
 */
export function roundForPrint(input: {
  readonly value: number
  readonly decimals: number
}): number {
  return Number(formatFixed(input))
}
