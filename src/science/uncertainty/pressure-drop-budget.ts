import { requireRange } from '../check/require-range.ts'
import { exactFactors } from '../units/exact-factors.ts'
import type { BudgetLine } from './budget-line.ts'
import { normalLine } from './normal-line.ts'
import { rectangularLine } from './rectangular-line.ts'
import { resolutionLine } from './resolution-line.ts'

/** Two readings of one gauge, and what is known of them; what is absent counts as exact. */
export interface PressureDropInput {
  readonly startPressureKPaAbs: number
  readonly endPressureKPaAbs: number
  /** Standard uncertainty of one reading, without the step of the display. */
  readonly pressurePa?: number | undefined
  /** Error of the gauge that the readings are not corrected for, to either side. */
  readonly pressureErrorPa?: number | undefined
  /** Step of the display. */
  readonly resolutionPa?: number | undefined
  /** Only where the drop is to be that of gas that kept its temperature. */
  readonly temperature?:
    | {
        readonly startTemperatureC: number
        /** By how much it may have changed until the end, to either side. */
        readonly changeHalfWidthK: number
      }
    | undefined
}

/** In kPa per Pa: the drop is start minus end. */
const ends = [
  { end: 'start', sensitivity: 1e-3 },
  { end: 'end', sensitivity: -1e-3 },
] as const

/**
 * Gives the uncertainty budget of a pressure drop, start minus end, contributions in kPa.
 *
 * u^2 = 2 u(p)^2 + 2 (e / sqrt 3)^2 + 2 (d / sqrt 12)^2 + (p2 / T x halfWidth / sqrt 3)^2
 *
 * @param input startPressureKPaAbs, endPressureKPaAbs p2: from 0 to 1e6; pressurePa u(p): from 0 to
 *   1e9; pressureErrorPa e, resolutionPa d: from 0 to 1e9; temperature: startTemperatureC T from
 *   -200 to 2000, and changeHalfWidthK from 0 to 50
 * @returns lines start-pressure, end-pressure, start-pressure-error, end-pressure-error,
 *   start-pressure-resolution, end-pressure-resolution and temperature-change, values in Pa and K;
 *   empty when nothing is known
 * @throws RangeError outside these ranges
 * Validity: errors of the two readings independent of each other: on the safe side for a gauge
 *   whose zero is off alike at both. The bare difference of two readings has no line for
 *   temperature: what it does to the gas is no error of the reading. A barometer that changes
 *   during the hold moves what a gauge shows against the room and is not in the budget.
 * Source: JCGM 100:2008, equation (10), 4.3.7, F.2.2.1, F.2.4.5; temperature: own
 *   derivation from p / T = constant.
 * @example pressureDropBudget({ startPressureKPaAbs: 271, endPressureKPaAbs: 270,
 *   pressurePa: 30 })[0].contribution // 0.030
 */
export function pressureDropBudget(input: PressureDropInput): BudgetLine[] {
  const name = 'pressureDropBudget'
  const { startPressureKPaAbs, endPressureKPaAbs, pressurePa, temperature } = input
  const { pressureErrorPa, resolutionPa } = input
  requireRange(name, 'startPressureKPaAbs', startPressureKPaAbs, { from: 0, to: 1e6 })
  requireRange(name, 'endPressureKPaAbs', endPressureKPaAbs, { from: 0, to: 1e6 })
  const lines: BudgetLine[] = []
  if (pressurePa !== undefined) {
    const value = requireRange(name, 'pressurePa', pressurePa, { from: 0, to: 1e9 })
    for (const { end, sensitivity } of ends) {
      lines.push(normalLine({ source: `${end}-pressure`, value, sensitivity }))
    }
  }
  if (pressureErrorPa !== undefined) {
    const halfWidth = requireRange(name, 'pressureErrorPa', pressureErrorPa, { from: 0, to: 1e9 })
    for (const { end, sensitivity } of ends) {
      lines.push(rectangularLine({ source: `${end}-pressure-error`, halfWidth, sensitivity }))
    }
  }
  if (resolutionPa !== undefined) {
    const step = requireRange(name, 'resolutionPa', resolutionPa, { from: 0, to: 1e9 })
    for (const { end, sensitivity } of ends) {
      lines.push(resolutionLine({ source: `${end}-pressure-resolution`, step, sensitivity }))
    }
  }
  if (temperature !== undefined) {
    const { startTemperatureC, changeHalfWidthK: halfWidth } = temperature
    requireRange(name, 'startTemperatureC', startTemperatureC, { from: -200, to: 2000 })
    requireRange(name, 'changeHalfWidthK', halfWidth, { from: 0, to: 50 })
    const sensitivity = endPressureKPaAbs / (startTemperatureC + exactFactors.celsiusZero.value)
    lines.push(rectangularLine({ source: 'temperature-change', halfWidth, sensitivity }))
  }
  return lines
}
