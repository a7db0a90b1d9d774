import type { Actor } from '../domain/actor.ts'
import type { StatedRule } from '../domain/agreed-rule.ts'
import { AppError } from '../domain/app-error.ts'
import type { ReceivedWorkOrder, WorkOrder } from '../domain/work-order.ts'
import { addAgreedRule } from './add-agreed-rule.ts'
import { addAudit } from './add-audit.ts'
import { addStageChange } from './add-stage-change.ts'
import { customerRuleOf } from './customer-rule-of.ts'
import type { Store } from './open.ts'
import { requireSeal } from './require-seal.ts'
import { workOrder } from './schema/work-order.ts'
import { takeNumber } from './take-number.ts'

/**
 * Receives a seal: the order gets the next number of the year of receipt, `W-2026-0042`, and keeps
 * the rule its results will be compared by.
 * @throws AppError not-found `no-seal` where the seal is another customer's
 */
export function addWorkOrder(store: Store, received: ReceivedWorkOrder, actor: Actor): WorkOrder {
  const { statedRule = null, ...fresh } = received
  const year = Number(fresh.receivedAt.slice(0, 4))
  return store.transact(() => {
    if (requireSeal(store, fresh.sealId).customerId !== fresh.customerId) {
      throw new AppError('not-found', 'no-seal')
    }
    const sequence = takeNumber(store, 'work-order', year)
    const number = `W-${year}-${String(sequence).padStart(4, '0')}`
    const row = { ...fresh, number, stage: 'received' as const }
    const added = store.db.insert(workOrder).values(row).returning().get()
    const step = { workOrderId: added.id, from: null, to: added.stage, reason: '' }
    addStageChange(store, step, actor)
    addAudit(store, actor, { act: 'add-work-order', subject: number, detail: added })
    keepRule(store, added, statedRule, actor)
    return added
  })
}

/** What is stated, else what the customer agreed to; else no row, and the house's rule holds. */
function keepRule(store: Store, order: WorkOrder, stated: StatedRule | null, actor: Actor): void {
  const { id: workOrderId, number: subject, customerId } = order
  const agreed = stated === null ? customerRuleOf(store, customerId) : undefined
  const rule = stated ?? agreed
  if (rule === undefined) return
  const of = agreed === undefined ? { workOrderId } : { workOrderId, copiedFromId: agreed.id }
  addAgreedRule(store, { of, stated: rule, subject }, actor)
}
