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
 * and in a shorter hold, and leaks less under a lower pressure.
 */
export function judgeStaticTest(test: JudgedStaticTest, limitSet: LimitSet): readonly Judged[] {
  const drop = limitFor(limitSet, 'static-drop', null) ?? null
  const leak = limitFor(limitSet, 'static-leak-rate', null) ?? null
  const dropWhy = drop === null ? 'no-limit' : whyNotComparable(test, drop)
  const leakWhy = leak === null ? 'no-limit' : null
  return [
    judge('static-drop', test.pressureDropKPa, drop, dropWhy),
    judge('static-leak-rate', leakAtLimitTemperature(test), leak, leakWhy),
  ]
}

function judge(
  characteristic: Judged['characteristic'],
  value: number,
  limit: Limit | null,
  whyOpen: Judged['why'] | null,
): Judged {
  if (limit === null || whyOpen !== null) {
    return { characteristic, verdict: 'open', value, limit, why: whyOpen ?? 'no-limit' }
  }
  const verdict = judgeUpperLimit({ value, upperLimit: limit.upper })
  const why = verdict === 'pass' ? 'within-limit' : 'beyond-limit'
  return { characteristic, verdict, value, limit, why }
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
