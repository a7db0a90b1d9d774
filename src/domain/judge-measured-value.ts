import { appliedLimitOf } from './applied-limit-of.ts'
import type { JudgeContext } from './judge-context.ts'
import { judgeResult } from './judge-result.ts'
import type { Judged } from './judged.ts'
import type { MeasuredValue } from './measured-value.ts'

/** Holds a value read with an instrument against its limit, by the rule that was agreed. */
export function judgeMeasuredValue(
  measured: Pick<
    MeasuredValue,
    'characteristic' | 'valueUm' | 'uncertainty' | 'componentId' | 'sizeMm'
  >,
  context: JudgeContext,
): Judged {
  const { characteristic, valueUm, uncertainty, componentId, sizeMm } = measured
  const { limitSet, agreedRule } = context
  return judgeResult({
    characteristic,
    value: valueUm,
    uncertainty,
    applied: appliedLimitOf(characteristic, context, { componentId, boreMm: sizeMm }),
    agreedRule,
    uncertaintyShareAtMost: limitSet.uncertaintyShareAtMost,
  })
}
