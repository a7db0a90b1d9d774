import type { LimitConditions } from './limit-set.ts'

/** What a limit can ask of a case; a range counts once, whether one end of it is stated or both. */
export const conditionNames = [
  'faceMaterial',
  'componentKind',
  'service',
  'diameter',
  'pressure',
  'speed',
] as const
export type ConditionName = (typeof conditionNames)[number]

/** Outside of `over`, inside of `upTo`; null: no end on that side. */
export type ConditionRange = { readonly over: number | null; readonly upTo: number | null }

export const rangeNames = [
  'diameter',
  'pressure',
  'speed',
] as const satisfies readonly ConditionName[]
export type RangeName = (typeof rangeNames)[number]

export function isRangeName(name: ConditionName): name is RangeName {
  return rangeNames.some((one) => one === name)
}

export function rangeOf(limit: LimitConditions, name: RangeName): ConditionRange {
  if (name === 'diameter') return { over: limit.diameterOverMm, upTo: limit.diameterUpToMm }
  if (name === 'pressure') return { over: limit.pressureOverKPa, upTo: limit.pressureUpToKPa }
  return { over: limit.speedOverPerMin, upTo: limit.speedUpToPerMin }
}

/** Does the limit ask for it at all? */
export function isStated(limit: LimitConditions, name: ConditionName): boolean {
  if (!isRangeName(name)) return limit[name] !== null
  const { over, upTo } = rangeOf(limit, name)
  return over !== null || upTo !== null
}

export function statedConditions(limit: LimitConditions): readonly ConditionName[] {
  return conditionNames.filter((name) => isStated(limit, name))
}
