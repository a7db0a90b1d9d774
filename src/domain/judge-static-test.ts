import { atMost } from '../science/acceptance/at-most.ts'
import { cToTemperature } from '../science/units/c-to-temperature.ts'
import { appliedLimitOf } from './applied-limit-of.ts'
import { isWithinLimits } from './is-within-limits.ts'
import type { JudgeContext } from './judge-context.ts'
import { judgeResult, type ResultToJudge } from './judge-result.ts'
import type { Judged } from './judged.ts'
import type { Limit } from './limit-set.ts'
import type { StaticTest } from './static-test.ts'
import type { Uncertainty } from './uncertainty.ts'

/** Limits of leak rate are written for gas at this temperature. */
export const leakLimitTemperatureC = 20

export type JudgedStaticTest = Pick<
  StaticTest,
  | 'pressureDropKPa'
  | 'leakPaM3PerS'
  | 'dropUncertainty'
  | 'leakUncertainty'
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
export function judgeStaticTest(test: JudgedStaticTest, context: JudgeContext): readonly Judged[] {
  const { limitSet, agreedRule } = context
  const { uncertaintyShareAtMost } = limitSet
  const by = { agreedRule, uncertaintyShareAtMost }
  const factor = toLimitTemperature(test)
  return [
    judge(test, {
      ...by,
      characteristic: 'static-drop',
      value: test.pressureDropKPa,
      uncertainty: test.dropUncertainty,
      applied: appliedLimitOf('static-drop', context, whole),
    }),
    judge(test, {
      ...by,
      characteristic: 'static-leak-rate',
      value: test.leakPaM3PerS * factor,
      uncertainty: test.leakUncertainty && scaled(test.leakUncertainty, factor),
      applied: appliedLimitOf('static-leak-rate', context, whole),
    }),
  ]
}

/** A test speaks for no single component. */
const whole = { componentId: null } as const

function judge(test: JudgedStaticTest, result: ResultToJudge): Judged {
  const judged = judgeResult(result)
  const { limit, upper } = judged
  const open = (why: Judged['why']): Judged => ({ ...judged, verdict: 'open', decision: null, why })
  if (limit === null || judged.verdict === 'open') return judged
  if (test.startPressureKPaAbs <= test.barometerKPa) return open('not-above-air')
  if (!isWithinLimits(result.value, judged)) return judged
  const whyNot = result.characteristic === 'static-drop' ? whyNotComparable(test, limit) : null
  if (whyNot !== null) return open(whyNot)
  if (upper !== null && !atMost({ value: -result.value, limit: upper })) return open('gas-came-in')
  return judged
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
function toLimitTemperature({ referenceTemperatureC }: JudgedStaticTest): number {
  if (referenceTemperatureC === leakLimitTemperatureC) return 1
  const limitK = cToTemperature(leakLimitTemperatureC, 'K')
  return limitK / cToTemperature(referenceTemperatureC, 'K')
}

function scaled(uncertainty: Uncertainty, factor: number): Uncertainty {
  return {
    ...uncertainty,
    standardUncertainty: uncertainty.standardUncertainty * factor,
    expandedUncertainty: uncertainty.expandedUncertainty * factor,
  }
}
