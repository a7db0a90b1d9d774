import { requireRange } from '../check/require-range.ts'
import { exactFactors } from './exact-factors.ts'
import type { TemperatureUnit } from './temperature-unit.ts'

/**
 * Converts degrees Celsius (a temperature, not a difference) to another unit.
 *
 * K = C + 273.15, F = C x 9 / 5 + 32
 *
 * @param temperatureC degrees Celsius, from -273.15 to 1e6
 * @param unit the unit wanted
 * @returns temperature in `unit`
 * @throws RangeError below absolute zero, above 1e6, or not a number
 * Source: SI Brochure, 9th edition, 2.3.1; the Fahrenheit degree by definition.
 * @example cToTemperature(20, 'K') // 293.15
 */
export function cToTemperature(temperatureC: number, unit: TemperatureUnit): number {
  const zeroK = exactFactors.celsiusZero.value
  requireRange('cToTemperature', 'temperatureC', temperatureC, { from: -zeroK, to: 1e6 })
  if (unit === 'K') return temperatureC + zeroK
  if (unit === 'F') return (temperatureC * 9) / 5 + 32
  return temperatureC
}
