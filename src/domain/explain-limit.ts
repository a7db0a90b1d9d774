import type { Characteristic } from './characteristic.ts'
import { conditionStanding } from './condition-standing.ts'
import { isMoreSpecific } from './is-more-specific.ts'
import type { LimitCase } from './limit-case.ts'
import { type ConditionName, conditionNames } from './limit-conditions.ts'
import { type AppliedLimit, limitFor } from './limit-for.ts'
import type { Limit, LimitSet } from './limit-set.ts'

/** Why a limit did not apply; the sentences stand in `views/words`. */
export const notAppliedReasons = [
  'material-differs',
  'material-not-known',
  'component-differs',
  'component-not-known',
  'service-differs',
  'service-not-known',
  'diameter-outside',
  'diameter-not-known',
  'pressure-outside',
  'pressure-not-known',
  'speed-outside',
  'speed-not-known',
  'less-specific',
  'tied',
] as const
export type NotAppliedReason = (typeof notAppliedReasons)[number]

export type NotApplied = { readonly limit: Limit; readonly why: readonly NotAppliedReason[] }

export type LimitExplanation = {
  readonly characteristic: Characteristic
  /** Undefined where no limit matches. */
  readonly applied: AppliedLimit | undefined
  /** Every other limit of the characteristic, each with at least one reason. */
  readonly others: readonly NotApplied[]
}

/** The limit that applies to a case, and of every other one why it does not. */
export function explainLimit(
  set: Pick<LimitSet, 'limits'>,
  characteristic: Characteristic,
  limitCase: LimitCase,
): LimitExplanation {
  const applied = limitFor(set, characteristic, limitCase)
  const others = set.limits.filter(
    (one) => one.characteristic === characteristic && one !== applied?.limit,
  )
  const reasonsOf = (limit: Limit) => {
    const missing = unmet(limit, limitCase)
    if (missing.length > 0 || applied === undefined) return missing
    return [isMoreSpecific(applied.limit, limit) ? ('less-specific' as const) : ('tied' as const)]
  }
  return {
    characteristic,
    applied,
    others: others.map((limit) => ({ limit, why: reasonsOf(limit) })),
  }
}

const reasonOf = {
  faceMaterial: { differs: 'material-differs', 'not-known': 'material-not-known' },
  componentKind: { differs: 'component-differs', 'not-known': 'component-not-known' },
  service: { differs: 'service-differs', 'not-known': 'service-not-known' },
  diameter: { differs: 'diameter-outside', 'not-known': 'diameter-not-known' },
  pressure: { differs: 'pressure-outside', 'not-known': 'pressure-not-known' },
  speed: { differs: 'speed-outside', 'not-known': 'speed-not-known' },
} as const satisfies Record<ConditionName, Record<'differs' | 'not-known', NotAppliedReason>>

function unmet(limit: Limit, limitCase: LimitCase): readonly NotAppliedReason[] {
  return conditionNames.flatMap((name) => {
    const standing = conditionStanding(limit, name, limitCase)
    return standing === 'differs' || standing === 'not-known' ? [reasonOf[name][standing]] : []
  })
}
