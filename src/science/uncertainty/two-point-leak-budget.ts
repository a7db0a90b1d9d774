import { requireRange } from '../check/require-range.ts'
import { type TwoPointInput, twoPointLeak } from '../leak/two-point-leak.ts'
import { exactFactors } from '../units/exact-factors.ts'
import type { BudgetLine } from './budget-line.ts'
import type { TwoPointUncertainties } from './leak-uncertainty.ts'
import { normalLine } from './normal-line.ts'
import { rectangularLine } from './rectangular-line.ts'
import { resolutionLine } from './resolution-line.ts'

const name = 'twoPointLeakBudget'

/** What is known of the readings of one kind, and how strongly they move the leak at each end. */
interface Readings {
  readonly kind: 'pressure' | 'temperature'
  readonly unit: 'Pa' | 'K'
  readonly to: number
  readonly standardUncertainty: number | undefined
  readonly errorHalfWidth: number | undefined
  readonly step: number | undefined
  readonly startSensitivity: number
  readonly endSensitivity: number
}

function readingLines(readings: Readings): BudgetLine[] {
  const { kind, unit, to, standardUncertainty, errorHalfWidth, step } = readings
  const ends = [
    { end: 'start', sensitivity: readings.startSensitivity },
    { end: 'end', sensitivity: readings.endSensitivity },
  ]
  const lines: BudgetLine[] = []
  if (standardUncertainty !== undefined) {
    requireRange(name, `${kind}${unit}`, standardUncertainty, { from: 0, to })
    for (const { end, sensitivity } of ends) {
      const value = standardUncertainty
      lines.push(normalLine({ source: `${end}-${kind}`, value, sensitivity }))
    }
  }
  if (errorHalfWidth !== undefined) {
    requireRange(name, `${kind}Error${unit}`, errorHalfWidth, { from: 0, to })
    for (const { end, sensitivity } of ends) {
      const source = `${end}-${kind}-error`
      lines.push(rectangularLine({ source, halfWidth: errorHalfWidth, sensitivity }))
    }
  }
  if (step !== undefined) {
    requireRange(name, `resolution${unit}`, step, { from: 0, to })
    for (const { end, sensitivity } of ends) {
      lines.push(resolutionLine({ source: `${end}-${kind}-resolution`, step, sensitivity }))
    }
  }
  return lines
}

function volumeLines(
  { volumeRelative, volumeErrorRelative }: TwoPointUncertainties,
  sensitivity: number,
): BudgetLine[] {
  const lines: BudgetLine[] = []
  if (volumeRelative !== undefined) {
    requireRange(name, 'volumeRelative', volumeRelative, { from: 0, to: 1 })
    lines.push(normalLine({ source: 'volume', value: volumeRelative, sensitivity }))
  }
  if (volumeErrorRelative !== undefined) {
    const halfWidth = volumeErrorRelative
    requireRange(name, 'volumeErrorRelative', halfWidth, { from: 0, to: 1 })
    lines.push(rectangularLine({ source: 'volume-error', halfWidth, sensitivity }))
  }
  return lines
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
 *   1e9; resolutionPa and resolutionK: steps d of the displays, d / sqrt 12 for each reading, from
 *   0 to 1e9 and 1000; volumeErrorRelative, pressureErrorPa, temperatureErrorK: errors e that the
 *   readings are not corrected for, to either side, e / sqrt 3 each, from 0 to 1, 1e9 and 1000;
 *   each may be absent and then has no line
 * @returns lines volume, volume-error, start-pressure, end-pressure, start-pressure-error,
 *   end-pressure-error, start-pressure-resolution, end-pressure-resolution, the same six of
 *   temperature, elapsed-time; values as a fraction, in Pa, K and s; empty when nothing is known
 * @throws RangeError outside these ranges
 * Validity: errors of the two readings independent of each other. A gain error of the gauge common
 *   to both scales the leak instead: add it to volumeRelative.
 * Source: JCGM 100:2008, equation (10), 4.3.7, F.2.4.5; partials own derivation, checked by
 *   finite differences and by Monte Carlo.
 * @example twoPointLeakBudget({ volumeL: 5, referenceTemperatureC: 20, start: { timeS: 0,
 *   pressureKPaAbs: 271.325, temperatureC: 21 }, end: { timeS: 600, pressureKPaAbs: 268.1,
 *   temperatureC: 20.5 } }, { volumeRelative: 0.02 })[0].contribution // 0.000460
 */
export function twoPointLeakBudget(
  input: TwoPointInput,
  uncertainties: TwoPointUncertainties,
): BudgetLine[] {
  const { timeS } = uncertainties
  const leak = twoPointLeak(input)
  const { start, end } = input
  const zeroK = exactFactors.celsiusZero.value
  const durationS = end.timeS - start.timeS
  const startK = start.temperatureC + zeroK
  const endK = end.temperatureC + zeroK
  const scale = (input.volumeL * (input.referenceTemperatureC + zeroK)) / durationS
  const lines = [
    ...volumeLines(uncertainties, leak),
    ...readingLines({
      kind: 'pressure',
      unit: 'Pa',
      to: 1e9,
      standardUncertainty: uncertainties.pressurePa,
      errorHalfWidth: uncertainties.pressureErrorPa,
      step: uncertainties.resolutionPa,
      // Pressures are in kPa inside and their uncertainty in Pa: a factor of 1000.
      startSensitivity: scale / startK / 1000,
      endSensitivity: -scale / endK / 1000,
    }),
    ...readingLines({
      kind: 'temperature',
      unit: 'K',
      to: 1000,
      standardUncertainty: uncertainties.temperatureK,
      errorHalfWidth: uncertainties.temperatureErrorK,
      step: uncertainties.resolutionK,
      startSensitivity: (-scale * start.pressureKPaAbs) / startK ** 2,
      endSensitivity: (scale * end.pressureKPaAbs) / endK ** 2,
    }),
  ]
  if (timeS !== undefined) {
    requireRange(name, 'timeS', timeS, { from: 0, to: 1e9 })
    const sensitivity = -leak / durationS
    lines.push(normalLine({ source: 'elapsed-time', value: timeS, sensitivity }))
  }
  return lines
}
