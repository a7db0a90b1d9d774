import { endsOf, isMoreSpecific } from './is-more-specific.ts'
import {
  type ConditionName,
  conditionNames,
  isRangeName,
  isStated,
  rangeOf,
} from './limit-conditions.ts'
import type { Limit, LimitConditions } from './limit-set.ts'

type Comparable = LimitConditions & Pick<Limit, 'characteristic'>

/**
 * Pairs of limits of one characteristic that can both match one case while neither comes before
 * the other: which of them judges would be chance. A set with such a pair can't be approved.
 */
export function limitTies<T extends Comparable>(
  limits: readonly T[],
): readonly (readonly [T, T])[] {
  return limits.flatMap((one, index) =>
    limits
      .slice(index + 1)
      .filter((other) => isTie(one, other))
      .map((other) => [one, other] as const),
  )
}

function isTie(one: Comparable, other: Comparable): boolean {
  if (one.characteristic !== other.characteristic) return false
  if (isMoreSpecific(one, other) || isMoreSpecific(other, one)) return false
  return conditionNames.every((name) => canBothHold(one, other, name))
}

function canBothHold(one: LimitConditions, other: LimitConditions, name: ConditionName): boolean {
  if (!isStated(one, name) || !isStated(other, name)) return true
  if (!isRangeName(name)) return one[name] === other[name]
  const [first, second] = [endsOf(rangeOf(one, name)), endsOf(rangeOf(other, name))]
  return Math.max(first.over, second.over) < Math.min(first.upTo, second.upTo)
}
