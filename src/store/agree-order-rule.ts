import type { Actor } from '../domain/actor.ts'
import type { StatedRule } from '../domain/agreed-rule.ts'
import { AppError } from '../domain/app-error.ts'
import { isMeasured } from '../domain/is-measured.ts'
import { addAgreedRule } from './add-agreed-rule.ts'
import type { Store } from './open.ts'
import { readEvidence } from './read-evidence.ts'
import { requireOpenOrder } from './require-open-order.ts'

/**
 * Agrees on a rule for one order, before anything of it is measured: who knows the result no longer
 * chooses what it is compared by.
 * @throws AppError not-found `no-work-order`; conflict `not-open`, `already-measured`
 */
export function agreeOrderRule(
  store: Store,
  fresh: { readonly workOrderId: number; readonly stated: StatedRule },
  actor: Actor,
): void {
  const { workOrderId, stated } = fresh
  store.transact(() => {
    const order = requireOpenOrder(store, workOrderId)
    if (isMeasured(readEvidence(store, workOrderId))) {
      throw new AppError('conflict', 'already-measured', { number: order.number })
    }
    addAgreedRule(store, { of: { workOrderId }, stated, subject: order.number }, actor)
  })
}
