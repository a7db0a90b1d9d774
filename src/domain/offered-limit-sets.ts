import type { LimitSet } from './limit-set.ts'
import { limitSetState } from './limit-set-state.ts'

/**
 * The sets that a new work order may take: in force on the day, and of each name only the newest
 * version that is. The one in force since the latest day comes first.
 * @param day calendar day, `2026-11-26`
 */
export function offeredLimitSets(sets: readonly LimitSet[], day: string): readonly LimitSet[] {
  const inForce = sets.filter((one) => limitSetState(one, day) === 'in-force')
  const isReplaced = (set: LimitSet) =>
    inForce.some((other) => other.name === set.name && other.version > set.version)
  return inForce.filter((one) => !isReplaced(one)).sort(laterFirst)
}

/** Of two of one day, the one that was stored later. */
function laterFirst(one: LimitSet, other: LimitSet): number {
  const [first, second] = [inForceFrom(one), inForceFrom(other)]
  if (first !== second) return first < second ? 1 : -1
  return other.id - one.id
}

/** The day a set comes or came into force; '' for a draft. */
export function inForceFrom(set: Pick<LimitSet, 'steps'>): string {
  return set.steps.find((one) => one.step === 'approved')?.effectiveOn ?? ''
}
