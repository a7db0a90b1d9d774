import {
  type ConditionName,
  type ConditionRange,
  conditionNames,
  isRangeName,
  isStated,
  rangeOf,
  statedConditions,
} from './limit-conditions.ts'
import type { LimitConditions } from './limit-set.ts'

/**
 * Does one limit come before another where both match? It states more conditions, or, of as many,
 * each of its conditions lies within the other's and one of them is narrower.
 */
export function isMoreSpecific(one: LimitConditions, other: LimitConditions): boolean {
  const difference = statedConditions(one).length - statedConditions(other).length
  if (difference !== 0) return difference > 0
  return isWithin(one, other) && !isWithin(other, one)
}

function isWithin(one: LimitConditions, other: LimitConditions): boolean {
  return conditionNames.every((name) => liesWithin(one, other, name))
}

function liesWithin(one: LimitConditions, other: LimitConditions, name: ConditionName): boolean {
  if (!isStated(other, name)) return true
  if (!isRangeName(name)) return one[name] === other[name]
  const [inner, outer] = [endsOf(rangeOf(one, name)), endsOf(rangeOf(other, name))]
  return inner.over >= outer.over && inner.upTo <= outer.upTo
}

/** A range that is not stated on a side has no end there. */
export function endsOf({ over, upTo }: ConditionRange): { over: number; upTo: number } {
  return { over: over ?? Number.NEGATIVE_INFINITY, upTo: upTo ?? Number.POSITIVE_INFINITY }
}
