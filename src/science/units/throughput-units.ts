import { requireFinite } from '../check/require-finite.ts'
import { requireRange } from '../check/require-range.ts'
import { exactFactors } from './exact-factors.ts'

/** One leak rate in the units of the trade. */
export interface ThroughputUnits {
  readonly leakPaM3PerS: number
  readonly leakMolPerS: number
  readonly leakMbarLPerS: number
  /** Standard cm3/min at 0 deg C and 101.325 kPa. */
  readonly leakSccm0C: number
  /** mL/min of gas at the reference temperature and 101.325 kPa. */
  readonly leakMlPerMin: number
}

const mlPerMinInM3PerS = 60e6

/**
 * Gives a throughput of gas at the reference temperature in the other units of the trade.
 *
 * mol/s = Q / (R T), mbar L/s = 10 Q, mL/min = 6e7 Q / 101325, sccm (0 C) = mL/min x 273.15 / T,
 * with Q = leakPaM3PerS, R the molar gas constant, T = referenceTemperatureC + 273.15
 *
 * @param input leakPaM3PerS: throughput in Pa m3/s, any finite number (sign is kept);
 *   referenceTemperatureC: temperature it refers to, from -270 to 2000
 * @returns the same flow in mol/s, mbar L/s, sccm (0 C) and mL/min
 * @throws RangeError outside these ranges
 * Validity: ideal gas. A "standard" cm3/min without its temperature is ambiguous by 7.3 %.
 * Source: ideal gas law; R = 8.314462618 J/(mol K) exactly (26th CGPM 2018); 0 C and 101.325 kPa
 *   as the normal state of DIN 1343 (from memory).
 * @example throughputUnits({ leakPaM3PerS: 1, referenceTemperatureC: 20 }).leakSccm0C // 551.75
 */
export function throughputUnits(input: {
  readonly leakPaM3PerS: number
  readonly referenceTemperatureC: number
}): ThroughputUnits {
  const { leakPaM3PerS, referenceTemperatureC } = input
  requireFinite('throughputUnits', 'leakPaM3PerS', leakPaM3PerS)
  requireRange('throughputUnits', 'referenceTemperatureC', referenceTemperatureC, {
    from: -270,
    to: 2000,
  })
  const zeroK = exactFactors.celsiusZero.value
  const temperatureK = referenceTemperatureC + zeroK
  const leakMlPerMin = (leakPaM3PerS * mlPerMinInM3PerS) / exactFactors.atmosphere.value
  return {
    leakPaM3PerS,
    leakMolPerS: leakPaM3PerS / (exactFactors.molarGasConstant.value * temperatureK),
    leakMbarLPerS: leakPaM3PerS * 10,
    leakSccm0C: (leakMlPerMin * zeroK) / temperatureK,
    leakMlPerMin,
  }
}
