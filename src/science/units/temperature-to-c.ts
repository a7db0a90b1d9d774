import { requireRange } from '../check/require-range.ts'
import { exactFactors } from './exact-factors.ts'
import type { TemperatureUnit } from './temperature-unit.ts'

const coldest: Readonly<Record<TemperatureUnit, number>> = {
  C: -exactFactors.celsiusZero.value,
  K: 0,
  F: -exactFactors.fahrenheitZero.value,
}

/**
 * Converts a temperature (not a difference) to degrees Celsius.
 *
 * C = K - 273.15 = (F - 32) x 5 / 9
 *
 * @param value temperature in `unit`, from absolute zero to 1e6
 * @param unit the unit it was read in
 * @returns degrees Celsius
 * @throws RangeError below absolute zero, above 1e6, or not a number
 * Source: SI Brochure, 9th edition, 2.3.1; the Fahrenheit degree by definition.
 * @example temperatureToC(60, 'F') // 15.556
 */
export function temperatureToC(value: number, unit: TemperatureUnit): number {
  requireRange('temperatureToC', 'value', value, { from: coldest[unit], to: 1e6 })
  if (unit === 'K') return value - exactFactors.celsiusZero.value
  if (unit === 'F') return ((value - 32) * 5) / 9
  return value
}
