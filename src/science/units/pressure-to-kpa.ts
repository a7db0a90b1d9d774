import { requireFinite } from '../check/require-finite.ts'
import { type PressureUnit, pascalsPerUnit } from './pressure-unit.ts'

/**
 * Converts a pressure or a pressure difference to kPa; gauge stays gauge, absolute stays absolute.
 *
 * kPa = value x (Pa in one unit) / 1000
 *
 * @param value pressure in `unit`, any finite number
 * @param unit the unit it was read in
 * @returns kPa
 * @throws RangeError when value is not finite
 * Source: factors in exact-factors.ts, all exact by definition.
 * @example pressureToKPa(25, 'psi') // 172.369
 */
export function pressureToKPa(value: number, unit: PressureUnit): number {
  requireFinite('pressureToKPa', 'value', value)
  return (value * pascalsPerUnit[unit]) / 1000
}
