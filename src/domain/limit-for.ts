import type { Characteristic } from './characteristic.ts'
import { conditionStanding } from './condition-standing.ts'
import { isMoreSpecific } from './is-more-specific.ts'
import type { LimitCase } from './limit-case.ts'
import { conditionNames } from './limit-conditions.ts'
import type { Limit, LimitConditions, LimitSet } from './limit-set.ts'

/** A limit as it holds in a case: what is written per millimetre is multiplied out. */
export type AppliedLimit = {
  readonly limit: Limit
  /** In the unit of the characteristic; null: no limit that side, or its size is not known. */
  readonly lower: number | null
  readonly upper: number | null
  /** False where the limit is per millimetre of what nobody measured. */
  readonly isSizeKnown: boolean
}

/**
 * The limit that holds for a characteristic: of those that match the case, the most specific one.
 * Undefined where none matches: nothing is then judged. A set with ties never comes into force; of
 * the limits of a draft that tie, the first stands.
 */
export function limitFor(
  set: Pick<LimitSet, 'limits'>,
  characteristic: Characteristic,
  limitCase: LimitCase,
): AppliedLimit | undefined {
  const matching = set.limits.filter(
    (one) => one.characteristic === characteristic && matchesCase(one, limitCase),
  )
  const first = matching.find((one) => !matching.some((other) => isMoreSpecific(other, one)))
  return first === undefined ? undefined : appliedLimit(first, limitCase)
}

/** Every condition that the limit states holds; what is not known does not. */
export function matchesCase(limit: LimitConditions, limitCase: LimitCase): boolean {
  return conditionNames.every((name) =>
    ['not-asked', 'holds'].includes(conditionStanding(limit, name, limitCase)),
  )
}

function appliedLimit(limit: Limit, limitCase: LimitCase): AppliedLimit {
  const { lower, upper, perMmOf } = limit
  if (perMmOf === null) return { limit, lower, upper, isSizeKnown: true }
  const sizeMm = limitCase.sizesMm[perMmOf]
  if (sizeMm === null) return { limit, lower: null, upper: null, isSizeKnown: false }
  const times = (perMm: number | null) => (perMm === null ? null : perMm * sizeMm)
  return { limit, lower: times(lower), upper: times(upper), isSizeKnown: true }
}
