import { combinedStandardUncertainty } from '../uncertainty/combined-standard-uncertainty.ts'
import {
  type LeakInputUncertainties,
  type LeakUncertainty,
  leakUncertainty,
} from '../uncertainty/leak-uncertainty.ts'
import { twoPointLeakBudget } from '../uncertainty/two-point-leak-budget.ts'
import { type ThroughputUnits, throughputUnits } from '../units/throughput-units.ts'
import { isothermalLeak } from './isothermal-leak.ts'
import { smallestDetectableLeak } from './smallest-detectable-leak.ts'
import { type TwoPointInput, twoPointLeak } from './two-point-leak.ts'

/** A leak in all units, with what can be said about its uncertainty. */
export interface PressureChange extends ThroughputUnits {
  readonly pressureDropKPa: number
  readonly uncompensatedPaM3PerS: number
  /** Absent when nothing is known about the noise of pressure or temperature. */
  readonly smallestDetectablePaM3PerS?: number
  /** Absent when no uncertainty is known. */
  readonly uncertainty?: LeakUncertainty
}

const growsWithLeak = ['volume', 'elapsed-time']

/**
 * Gives the leak of a closed volume from its state before and after a hold, in the units of the
 * trade, with its uncertainty as far as uncertainties are given. Positive when gas leaves.
 *
 * As twoPointLeak, throughputUnits, isothermalLeak, twoPointLeakBudget; smallest detectable
 * 3.29 x the part of u that stays without a leak (pressure and temperature)
 *
 * @param input as twoPointLeak
 * @param uncertainties as twoPointLeakBudget; what is absent counts as exact
 * @returns the leak, pressureDropKPa (start minus end), uncompensatedPaM3PerS (as if isothermal),
 *   and, when it can be known, smallestDetectablePaM3PerS and uncertainty
 * @throws RangeError outside the ranges of these functions
 * Validity: two readings cannot show whether the pressure had settled; take a trace for that.
 * Source: as the functions named.
 * @example pressureChange({ volumeL: 28, referenceTemperatureC: 20, start: { timeS: 0,
 *   pressureKPaAbs: 270, temperatureC: 20 }, end: { timeS: 300, pressureKPaAbs: 256,
 *   temperatureC: 20 } }).leakMlPerMin // 773.7
 */
export function pressureChange(
  input: TwoPointInput,
  uncertainties: LeakInputUncertainties = {},
): PressureChange {
  const leakPaM3PerS = twoPointLeak(input)
  const { volumeL, referenceTemperatureC, start, end } = input
  const pressureDropKPa = start.pressureKPaAbs - end.pressureKPaAbs
  const durationS = end.timeS - start.timeS
  const lines = twoPointLeakBudget(input, uncertainties)
  const noise = lines.filter((line) => !growsWithLeak.includes(line.source))
  return {
    ...throughputUnits({ leakPaM3PerS, referenceTemperatureC }),
    pressureDropKPa,
    uncompensatedPaM3PerS: isothermalLeak({ volumeL, pressureDropKPa, durationS }),
    ...(noise.length > 0 && {
      smallestDetectablePaM3PerS: smallestDetectableLeak(combinedStandardUncertainty(noise)),
    }),
    ...(lines.length > 0 && { uncertainty: leakUncertainty(lines) }),
  }
}
