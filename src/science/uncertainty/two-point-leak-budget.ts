import { requireRange } from '../check/require-range.ts'
import { type TwoPointInput, twoPointLeak } from '../leak/two-point-leak.ts'
import { exactFactors } from '../units/exact-factors.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import type { LeakInputUncertainties } from './leak-uncertainty.ts'

const name = 'twoPointLeakBudget'

function normal(source: string, value: number, sensitivity: number): BudgetLine {
  return budgetLine({ source, value, distribution: 'normal', sensitivity })
}

/**
 * Gives the uncertainty budget of a two-point leak, contributions in Pa m3/s.
 *
 * Partials of Q = V Tref / dt x (p1 / T1 - p2 / T2): by relative volume Q; by pressure
 * V Tref / (dt T) at each end; by temperature V Tref p / (dt T^2) at each end; by time -Q / dt
 *
 * @param input as twoPointLeak
 * @param uncertainties volumeRelative: from 0 to 1; pressurePa: of one reading, from 0 to 1e9;
 *   temperatureK: of one reading, from 0 to 1000; timeS: of the time from start to end, from 0 to
 *   1e9; each may be absent and then has no line
 * @returns lines volume, start-pressure, end-pressure, start-temperature, end-temperature,
 *   elapsed-time; values as a fraction, in Pa, K and s; empty when nothing is known
 * @throws RangeError outside these ranges
 * Validity: errors of the two readings independent of each other. A gain error of the gauge common
 *   to both scales the leak instead: add it to volumeRelative.
 * Source: JCGM 100:2008, equation (10); partials own derivation, checked by finite differences and
 *   by Monte Carlo.
 * @example twoPointLeakBudget({ volumeL: 5, referenceTemperatureC: 20, start: { timeS: 0,
 *   pressureKPaAbs: 271.325, temperatureC: 21 }, end: { timeS: 600, pressureKPaAbs: 268.1,
 *   temperatureC: 20.5 } }, { volumeRelative: 0.02 })[0].contribution // 0.000460
 */
export function twoPointLeakBudget(
  input: TwoPointInput,
  uncertainties: LeakInputUncertainties,
): BudgetLine[] {
  const { volumeRelative, pressurePa, temperatureK, timeS } = uncertainties
  const leak = twoPointLeak(input)
  const zeroK = exactFactors.celsiusZero.value
  const durationS = input.end.timeS - input.start.timeS
  const scale = (input.volumeL * (input.referenceTemperatureC + zeroK)) / durationS
  const lines: BudgetLine[] = []
  if (volumeRelative !== undefined) {
    requireRange(name, 'volumeRelative', volumeRelative, { from: 0, to: 1 })
    lines.push(normal('volume', volumeRelative, leak))
  }
  const ends = [
    { end: 'start', sign: 1, state: input.start },
    { end: 'end', sign: -1, state: input.end },
  ]
  for (const { end, sign, state } of pressurePa === undefined ? [] : ends) {
    requireRange(name, 'pressurePa', pressurePa as number, { from: 0, to: 1e9 })
    // Pressures are in kPa inside and their uncertainty in Pa: a factor of 1000.
    const perPa = (sign * scale) / (state.temperatureC + zeroK) / 1000
    lines.push(normal(`${end}-pressure`, pressurePa as number, perPa))
  }
  for (const { end, sign, state } of temperatureK === undefined ? [] : ends) {
    requireRange(name, 'temperatureK', temperatureK as number, { from: 0, to: 1000 })
    const perK = (-sign * scale * state.pressureKPaAbs) / (state.temperatureC + zeroK) ** 2
    lines.push(normal(`${end}-temperature`, temperatureK as number, perK))
  }
  if (timeS !== undefined) {
    requireRange(name, 'timeS', timeS, { from: 0, to: 1e9 })
    lines.push(normal('elapsed-time', timeS, -leak / durationS))
  }
  return lines
}
