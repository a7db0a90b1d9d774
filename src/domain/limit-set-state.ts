import type { LimitSet } from './limit-set.ts'

/** Draft: nobody approved it. Approved: in force from a later day. Retired: no longer offered. */
export type LimitSetState = 'draft' | 'approved' | 'in-force' | 'retired'

/**
 * How a set stands on a day.
 * @param day calendar day, `2026-11-26`
 */
export function limitSetState(set: Pick<LimitSet, 'steps'>, day: string): LimitSetState {
  const approved = set.steps.find((one) => one.step === 'approved')
  const retired = set.steps.find((one) => one.step === 'retired')
  if (approved === undefined) return retired === undefined ? 'draft' : 'retired'
  if (retired !== undefined && day >= retired.effectiveOn) return 'retired'
  return day >= approved.effectiveOn ? 'in-force' : 'approved'
}
