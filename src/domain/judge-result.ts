import { atMost } from '../science/acceptance/at-most.ts'
import {
  type ConformityDecision,
  decideConformity,
} from '../science/acceptance/decide-conformity.ts'
import type { AgreedRule } from './agreed-rule.ts'
import type { Characteristic } from './characteristic.ts'
import { isWithinLimits } from './is-within-limits.ts'
import { isWithoutSign } from './is-without-sign.ts'
import type { Judged, JudgedReason, Verdict } from './judged.ts'
import { largestLine } from './largest-line.ts'
import type { AppliedLimit } from './limit-for.ts'
import { missingFromBudget } from './missing-from-budget.ts'
import type { Uncertainty } from './uncertainty.ts'

export type ResultToJudge = {
  readonly characteristic: Characteristic
  /** In the unit of its limit, unrounded. */
  readonly value: number
  /** Null where it is not known. */
  readonly uncertainty: Uncertainty | null
  /** Undefined where the set has no limit for it. */
  readonly applied: AppliedLimit | undefined
  readonly agreedRule: Pick<AgreedRule, 'rule' | 'probability'>
  readonly uncertaintyShareAtMost: number
}

/**
 * Holds one result against the limit that applies to it, by the rule that was agreed. The one
 * place in the records where a verdict comes from.
 */
export function judgeResult(result: ResultToJudge): Judged {
  const { characteristic, value, uncertainty, applied, agreedRule } = result
  const limit = applied?.limit ?? null
  const { lower, upper } = applied ?? { lower: null, upper: null }
  const largestSource = uncertainty && (largestLine(uncertainty)?.line.source ?? null)
  const judged = { characteristic, value, limit, lower, upper, largestSource, decision: null }
  if (applied === undefined) return { ...judged, verdict: 'open', why: 'no-limit' }
  if (!applied.isSizeKnown) return { ...judged, verdict: 'open', why: 'size-not-known' }
  if (lower === null && upper === null) return { ...judged, verdict: 'open', why: 'no-limit' }
  const isWithin = isWithinLimits(value, { lower, upper })
  if (uncertainty === null) {
    if (agreedRule.rule !== 'simple') {
      return { ...judged, verdict: 'undecidable', why: 'no-uncertainty' }
    }
    return isWithin
      ? { ...judged, verdict: 'pass', why: 'within-limit' }
      : { ...judged, verdict: 'fail', why: 'beyond-limit' }
  }
  const decision = decideConformity({
    value,
    standardUncertainty: uncertainty.standardUncertainty,
    expandedUncertainty: uncertainty.expandedUncertainty,
    ...(lower === null ? {} : { lowerLimit: lower }),
    ...(upper === null ? {} : { upperLimit: upper }),
    rule: agreedRule.rule,
    probability: agreedRule.probability,
    isNonNegative: isWithoutSign(characteristic) && value >= 0,
    uncertaintyShareAtMost: result.uncertaintyShareAtMost,
  })
  const [missing] = missingFromBudget(uncertainty, characteristic)
  if (missing !== undefined && !isSafeWithout(agreedRule.rule, decision)) {
    const why = 'incomplete-budget'
    return { ...judged, verdict: 'undecidable', largestSource: missing, why }
  }
  return {
    ...judged,
    // A probability from a budget that is too small would claim too much.
    decision: missing === undefined ? decision : null,
    verdict: decision.outcome,
    why: reasonOf(decision, isWithin, agreedRule.rule),
  }
}

/**
 * Whether a decision holds although its budget lacks an instrument, and U is larger than it says.
 * Simple acceptance compares the value alone. What a guard band of U refuses, a wider one refuses
 * too.
 */
function isSafeWithout(rule: AgreedRule['rule'], { outcome }: ConformityDecision): boolean {
  return rule === 'simple' || (rule === 'guard-u95' && outcome === 'fail')
}

/** A rule with a guard band refuses what lies within the limit too: it is told apart. */
function reasonOf(
  decision: ConformityDecision,
  isWithin: boolean,
  rule: AgreedRule['rule'],
): JudgedReason {
  if (decision.outcome === 'undecidable') {
    // The one rule that leaves a gap of its own; else the uncertainty leaves nothing to accept.
    const { lower, upper } = decision.acceptanceLimits
    const isEmpty = lower !== null && upper !== null && !atMost({ value: lower, limit: upper })
    const isGap = rule === 'guard-probability' && !decision.isUncertaintyTooLarge && !isEmpty
    return isGap ? 'not-proven' : 'uncertainty-too-large'
  }
  if (decision.outcome === 'fail') return isWithin ? 'within-guard' : 'beyond-limit'
  return reasons[decision.outcome]
}

const reasons = {
  pass: 'within-limit',
  'conditional-pass': 'within-guard',
  'conditional-fail': 'beyond-within-guard',
} as const satisfies Partial<Record<Verdict, JudgedReason>>
