import { requireFinite } from '../check/require-finite.ts'
import { type PressureUnit, pascalsPerUnit } from './pressure-unit.ts'

/**
 * Converts kPa to another pressure unit; gauge stays gauge, absolute stays absolute.
 *
 * pressure = kPa x 1000 / (Pa in one unit)
 *
 * @param kPa pressure in kPa, any finite number
 * @param unit the unit wanted
 * @returns pressure in `unit`
 * @throws RangeError when kPa is not finite
 * Source: factors in exact-factors.ts, all exact by definition.
 * @example kPaToPressure(14, 'psi') // 2.0305
 */
export function kPaToPressure(kPa: number, unit: PressureUnit): number {
  requireFinite('kPaToPressure', 'kPa', kPa)
  return (kPa * 1000) / pascalsPerUnit[unit]
}
