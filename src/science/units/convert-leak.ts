import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { exactFactors } from './exact-factors.ts'
import { type LeakUnit, leakUnitFactors } from './leak-unit.ts'

/**
 * Gives a leak of gas in another unit of the trade.
 *
 * amount per second = Q / (R T), Q: pressure x volume a second of gas at T. T is the temperature that
 * a unit names, or referenceTemperatureC where it names none.
 *
 * @param input value: any finite number (sign is kept); from, to: units; referenceTemperatureC: from
 *   -270 to 2000
 * @returns the value in the other unit
 * @throws RangeError outside these ranges
 * Validity: ideal gas; mass as air.
 * Source: ideal gas law with R of the 26th CGPM 2018; exact definitions of the units.
 * @example convertLeak({ value: 1, from: 'Pa-m3-per-s', to: 'sccm-0C', referenceTemperatureC: 20 })
 *   // 551.75
 */
export function convertLeak(input: {
  readonly value: number
  readonly from: LeakUnit
  readonly to: LeakUnit
  readonly referenceTemperatureC: number
}): number {
  const { value, from, to, referenceTemperatureC } = input
  requireFinite('convertLeak', 'value', value)
  const range = { from: -270, to: 2000 }
  requireRange('convertLeak', 'referenceTemperatureC', referenceTemperatureC, range)
  if (from === to) return value
  return value * (molPerS(from, referenceTemperatureC) / molPerS(to, referenceTemperatureC))
}

function molPerS(unit: LeakUnit, referenceTemperatureC: number): number {
  const factor = leakUnitFactors[unit]
  if ('molPerS' in factor) return factor.molPerS
  const temperatureK =
    factor.ofTemperatureK ?? referenceTemperatureC + exactFactors.celsiusZero.value
  return factor.paM3PerS / (exactFactors.molarGasConstant.value * temperatureK)
}
