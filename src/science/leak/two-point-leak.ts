import { requireRange } from '../check/require-range.ts'
import { exactFactors } from '../units/exact-factors.ts'
import { type PressureState, requirePressureState } from './require-pressure-state.ts'

/** A rigid volume of gas before and after a hold. */
export interface TwoPointInput {
  readonly volumeL: number
  readonly referenceTemperatureC: number
  readonly start: PressureState
  readonly end: PressureState
}

/**
 * Gives the leak of a closed volume from its state before and after a hold, in Pa m3/s of gas at
 * the reference temperature. Positive when gas leaves.
 *
 * Q = V Tref / dt x (p1 / T1 - p2 / T2), temperatures in K, pressures absolute
 *
 * @param input volumeL V: from 1e-6 to 1e6; referenceTemperatureC Tref: from -270 to 2000; start
 *   and end: timeS in s (end later by 1e-6 to 1e9), pressureKPaAbs p from 0 to 1e6, temperatureC T
 *   of the gas from -270 to 2000
 * @returns Pa m3/s (1 L kPa/s is 1 Pa m3/s)
 * @throws RangeError outside these ranges
 * Validity: ideal gas, rigid volume, temperature of the gas and not of the room. Bellows and
 *   O-rings creep: let them settle first.
 * Source: ideal gas law; 40 CFR 1065.644 is the same formula for a vacuum.
 * @example twoPointLeak({ volumeL: 5, referenceTemperatureC: 20, start: { timeS: 0,
 *   pressureKPaAbs: 271.325, temperatureC: 21 }, end: { timeS: 600, pressureKPaAbs: 268.1,
 *   temperatureC: 20.5 } }) // 0.022992
 */
export function twoPointLeak(input: TwoPointInput): number {
  const { volumeL, referenceTemperatureC, start, end } = input
  requireRange('twoPointLeak', 'volumeL', volumeL, { from: 1e-6, to: 1e6 })
  requireRange('twoPointLeak', 'referenceTemperatureC', referenceTemperatureC, {
    from: -270,
    to: 2000,
  })
  requirePressureState('twoPointLeak', start)
  requirePressureState('twoPointLeak', end)
  const durationS = end.timeS - start.timeS
  requireRange('twoPointLeak', 'time from start to end in s', durationS, { from: 1e-6, to: 1e9 })
  const zeroK = exactFactors.celsiusZero.value
  const pOverTStart = start.pressureKPaAbs / (start.temperatureC + zeroK)
  const pOverTEnd = end.pressureKPaAbs / (end.temperatureC + zeroK)
  return ((volumeL * (referenceTemperatureC + zeroK)) / durationS) * (pOverTStart - pOverTEnd)
}
