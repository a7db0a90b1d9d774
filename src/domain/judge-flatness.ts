import { appliedLimitOf } from './applied-limit-of.ts'
import type { FlatnessReading } from './flatness.ts'
import type { JudgeContext } from './judge-context.ts'
import { judgeResult } from './judge-result.ts'
import type { Judged } from './judged.ts'

/**
 * Holds a reading against the limit for its face, by the rule that was agreed. An unreadable face
 * is never a pass, whether or not there is a limit.
 */
export function judgeFlatness(
  reading: Pick<FlatnessReading, 'flatnessUm' | 'uncertainty' | 'componentId'>,
  context: JudgeContext,
): Judged {
  const characteristic = 'flatness'
  const { limitSet, agreedRule } = context
  const { componentId, flatnessUm, uncertainty } = reading
  const applied = appliedLimitOf(characteristic, context, { componentId })
  if (flatnessUm === null) {
    return {
      characteristic,
      verdict: 'fail',
      value: null,
      limit: applied?.limit ?? null,
      lower: applied?.lower ?? null,
      upper: applied?.upper ?? null,
      decision: null,
      largestSource: null,
      why: 'unreadable',
    }
  }
  return judgeResult({
    characteristic,
    value: flatnessUm,
    uncertainty,
    applied,
    agreedRule,
    uncertaintyShareAtMost: limitSet.uncertaintyShareAtMost,
  })
}
