import { requireRange } from '../check/require-range.ts'
import { type BudgetLine, budgetLine } from './budget-line.ts'
import type { LeakInputUncertainties } from './leak-uncertainty.ts'

const name = 'traceLeakBudget'

/** What the budget of a trace needs to know about its fit. */
export interface TraceFit {
  readonly volumeL: number
  readonly leakPaM3PerS: number
  readonly windowS: number
  /** Mean of p Tref / T^2 over the trace: how strongly 1 K moves the compensated pressure. */
  readonly kPaPerK: number
  /** Absent when all readings were equal, so that the noise was not seen. */
  readonly fall?:
    | {
        readonly standardUncertaintyKPaPerS: number
        /** Absent where it is known from the step of the display and not from scatter. */
        readonly degreesOfFreedom?: number
      }
    | undefined
}

/**
 * Gives the uncertainty budget of the leak fitted to a trace, contributions in Pa m3/s.
 *
 * Partials of Q = V x fall: by fall V; by relative volume Q; by the change of the errors of gauge
 * and thermometer over the window V sqrt 2 / window and V sqrt 2 p Tref / (T^2 window); by time
 * -Q / window
 *
 * @param fit volumeL: from 1e-6 to 1e6; leakPaM3PerS: any finite number; windowS: from 1e-6 to
 *   1e9; kPaPerK: from 0 to 1e6; fall: standard uncertainty of the fitted fall in kPa/s with its
 *   degrees of freedom
 * @param uncertainties as twoPointLeakBudget; steps of displays are in fall already
 * @returns lines slope, volume, pressure, temperature, elapsed-time; values in kPa/s, as a
 *   fraction, in Pa, K and s; empty when nothing is known
 * @throws RangeError outside these ranges
 * Validity: the noise of the readings is in the slope line already; pressurePa and temperatureK are
 *   taken as what the instruments may have drifted, and not averaged over the readings.
 * Source: JCGM 100:2008, equation (10); partials own derivation.
 * @example traceLeakBudget({ volumeL: 2, leakPaM3PerS: 0.01, windowS: 600, kPaPerK: 1, fall: {
 *   standardUncertaintyKPaPerS: 0.0001, degreesOfFreedom: 50 } }, {})[0].contribution // 0.0002
 */
export function traceLeakBudget(
  fit: TraceFit,
  uncertainties: LeakInputUncertainties,
): BudgetLine[] {
  const { volumeL, leakPaM3PerS, windowS, kPaPerK, fall } = fit
  requireRange(name, 'volumeL', volumeL, { from: 1e-6, to: 1e6 })
  requireRange(name, 'windowS', windowS, { from: 1e-6, to: 1e9 })
  requireRange(name, 'kPaPerK', kPaPerK, { from: 0, to: 1e6 })
  const perEndDifference = (volumeL * Math.SQRT2) / windowS
  const lines: BudgetLine[] = []
  if (fall !== undefined) {
    lines.push(
      budgetLine({
        source: 'slope',
        value: fall.standardUncertaintyKPaPerS,
        distribution: 'normal',
        sensitivity: volumeL,
        ...(fall.degreesOfFreedom !== undefined && { degreesOfFreedom: fall.degreesOfFreedom }),
      }),
    )
  }
  const instruments = [
    { source: 'volume', key: 'volumeRelative', to: 1, sensitivity: leakPaM3PerS },
    { source: 'pressure', key: 'pressurePa', to: 1e9, sensitivity: perEndDifference / 1000 },
    {
      source: 'temperature',
      key: 'temperatureK',
      to: 1000,
      sensitivity: perEndDifference * kPaPerK,
    },
    { source: 'elapsed-time', key: 'timeS', to: 1e9, sensitivity: -leakPaM3PerS / windowS },
  ] as const
  for (const { source, key, to, sensitivity } of instruments) {
    const value = uncertainties[key]
    if (value === undefined) continue
    requireRange(name, key, value, { from: 0, to })
    lines.push(budgetLine({ source, value, distribution: 'normal', sensitivity }))
  }
  return lines
}
