import type { Actor } from '../domain/actor.ts'
import type { LimitSet, LimitSetStep } from '../domain/limit-set.ts'
import { limitSetStepRefusal } from '../domain/limit-set-step-refusal.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { limitSetStep } from './schema/limit-set-step.ts'

const actOf = { approved: 'approve-limit-set', retired: 'retire-limit-set' } as const

/**
 * Approves a set, or retires it. Every rule is asked here, inside the transaction: someone else may
 * have been first.
 * @throws AppError not-found `no-limit-set`; forbidden `not-inspector`; conflict
 *   `limit-set-retired`, `limit-set-approved`, `own-draft`, `limits-tie`
 */
export function addLimitSetStep(
  store: Store,
  fresh: Pick<LimitSetStep, 'step' | 'effectiveOn' | 'reason'> & {
    readonly limitSetId: number
    readonly by: User
  },
  actor: Actor,
): LimitSet {
  const { limitSetId, step, effectiveOn, reason, by } = fresh
  return store.transact(() => {
    const set = requireLimitSet(store, limitSetId)
    const refusal = limitSetStepRefusal({ set, step, by })
    if (refusal !== undefined) throw refusal
    const row = {
      limitSetId,
      step,
      effectiveOn,
      reason,
      byId: by.id,
      byName: by.displayName,
      at: actor.at,
    }
    const added = store.db.insert(limitSetStep).values(row).returning().get()
    addAudit(store, actor, {
      act: actOf[step],
      subject: `limit-set ${limitSetId}`,
      detail: added,
    })
    return requireLimitSet(store, limitSetId)
  })
}
