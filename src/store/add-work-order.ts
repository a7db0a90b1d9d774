import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { NewWorkOrder, WorkOrder } from '../domain/work-order.ts'
import { addAudit } from './add-audit.ts'
import { addStageChange } from './add-stage-change.ts'
import type { Store } from './open.ts'
import { requireSeal } from './require-seal.ts'
import { workOrder } from './schema/work-order.ts'
import { takeNumber } from './take-number.ts'

/**
 * Receives a seal: the order gets the next number of the year of receipt, `W-2026-0042`.
 * @throws AppError not-found `no-seal` where the seal is another customer's
 */
export function addWorkOrder(store: Store, fresh: NewWorkOrder, actor: Actor): WorkOrder {
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
    return added
  })
}
