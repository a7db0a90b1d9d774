import type { Actor } from '../domain/actor.ts'
import type { StatedRule } from '../domain/agreed-rule.ts'
import { AppError } from '../domain/app-error.ts'
import { offeredLimitSets } from '../domain/offered-limit-sets.ts'
import type { ReceivedWorkOrder, WorkOrder } from '../domain/work-order.ts'
import { addAgreedRule } from './add-agreed-rule.ts'
import { addAudit } from './add-audit.ts'
import { addStageChange } from './add-stage-change.ts'
import { customerRuleOf } from './customer-rule-of.ts'
import { listLimitSets } from './list-limit-sets.ts'
import type { Store } from './open.ts'
import { requireLimitSet } from './require-limit-set.ts'
import { requireSeal } from './require-seal.ts'
import { workOrder } from './schema/work-order.ts'
import { takeNumber } from './take-number.ts'

/**
 * Receives a seal: the order gets the next number of the year of receipt, `W-2026-0042`, and keeps
 * the rule its results will be compared by. Its limit set is looked at here, inside the
 * transaction: someone may have retired it since the form was drawn.
 * @throws AppError not-found `no-seal` where the seal is another customer's, `no-limit-set`;
 *   conflict `limit-set-not-offered` where the set is not in force on the day of receipt
 */
export function addWorkOrder(store: Store, received: ReceivedWorkOrder, actor: Actor): WorkOrder {
  const { statedRule = null, ...fresh } = received
  const year = Number(fresh.receivedAt.slice(0, 4))
  return store.transact(() => {
    if (requireSeal(store, fresh.sealId).customerId !== fresh.customerId) {
      throw new AppError('not-found', 'no-seal')
    }
    requireOffered(store, fresh)
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

function requireOffered(
  store: Store,
  { limitSetId, receivedAt }: Pick<ReceivedWorkOrder, 'limitSetId' | 'receivedAt'>,
): void {
  const { name } = requireLimitSet(store, limitSetId)
  const offered = offeredLimitSets(listLimitSets(store), receivedAt.slice(0, 10))
  if (offered.some((one) => one.id === limitSetId)) return
  throw new AppError('conflict', 'limit-set-not-offered', { name })
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
