import { atMost } from '../science/acceptance/at-most.ts'
import { judgeUpperLimit } from '../science/acceptance/judge-upper-limit.ts'
import { cToTemperature } from '../science/units/c-to-temperature.ts'
import type { Judged } from './judged.ts'
import { limitFor } from './limit-for.ts'
import type { Limit, LimitSet } from './limit-set.ts'
import type { StaticTest } from './static-test.ts'

/** Limits of leak rate are written for gas at this temperature. */
export const leakLimitTemperatureC = 20

export type JudgedStaticTest = Pick<
  StaticTest,
  | 'pressureDropKPa'
  | 'leakPaM3PerS'
  | 'referenceTemperatureC'
  | 'volumeL'
  | 'durationS'
  | 'startPressureKPaAbs'
  | 'barometerKPa'
>

/**
 * Holds a static test against the limits of drop and of leak rate; both are always answered.
 * A drop is only comparable where the volume was no larger, the hold no shorter and the pressure
 * no lower at its start than the limit is written for: the same leak shows less in a larger volume
 * and in a shorter hold, and leaks less under a lower pressure. What is beyond the limit even so
 * fails all the more. Limits are written for gas that leaves: a hold that did not begin above the
 * air around can't show it, and where more gas came in than may leave, something fed the volume.
 */
export function judgeStaticTest(test: JudgedStaticTest, limitSet: LimitSet): readonly Judged[] {
  const drop = limitFor(limitSet, 'static-drop', null) ?? null
  const leak = limitFor(limitSet, 'static-leak-rate', null) ?? null
  const canLeave = test.startPressureKPaAbs > test.barometerKPa
  const dropKPa = test.pressureDropKPa
  const leakPaM3PerS = leakAtLimitTemperature(test)
  return [
    judge('static-drop', dropKPa, drop, canLeave, drop && whyNotComparable(test, drop)),
    judge('static-leak-rate', leakPaM3PerS, leak, canLeave, null),
  ]
}

function judge(
  characteristic: Judged['characteristic'],
  value: number,
  limit: Limit | null,
  canLeave: boolean,
  whyNot: Judged['why'] | null,
): Judged {
  const open = (why: Judged['why']): Judged => {
    return { characteristic, verdict: 'open', value, limit, ...notWeighed(limit), why }
  }
  if (limit === null) return open('no-limit')
  if (!canLeave) return open('not-above-air')
  const verdict = judgeUpperLimit({ value, upperLimit: limit.upper ?? Number.POSITIVE_INFINITY })
  if (verdict === 'fail')
    return { characteristic, verdict, value, limit, ...notWeighed(limit), why: 'beyond-limit' }
  if (whyNot !== null) return open(whyNot)
  if (!atMost({ value: -value, limit: limit.upper ?? Number.POSITIVE_INFINITY }))
    return open('gas-came-in')
  return { characteristic, verdict, value, limit, ...notWeighed(limit), why: 'within-limit' }
}

function whyNotComparable(test: JudgedStaticTest, limit: Limit): Judged['why'] | null {
  if (limit.volumeAtMostL !== null && test.volumeL > limit.volumeAtMostL) return 'volume-too-large'
  if (limit.withinS !== null && test.durationS < limit.withinS) return 'hold-too-short'
  return isStartTooLow(test, limit) ? 'pressure-too-low' : null
}

/** Gauge pressure is what stood over the barometer of the record, whatever the gauge read. */
function isStartTooLow(test: JudgedStaticTest, { startAtLeastKPaGauge }: Limit): boolean {
  if (startAtLeastKPaGauge === null) return false
  const startKPaGauge = test.startPressureKPaAbs - test.barometerKPa
  return !atMost({ value: startAtLeastKPaGauge, limit: startKPaGauge })
}

/** The same amount of gas per second is more throughput when it is warmer: q ~ T. */
function leakAtLimitTemperature(test: JudgedStaticTest): number {
  if (test.referenceTemperatureC === leakLimitTemperatureC) return test.leakPaM3PerS
  const limitK = cToTemperature(leakLimitTemperatureC, 'K')
  return (test.leakPaM3PerS * limitK) / cToTemperature(test.referenceTemperatureC, 'K')
}

function notWeighed(limit: Limit | null) {
  return { lower: null, upper: limit?.upper ?? null, decision: null, largestSource: null }
}
