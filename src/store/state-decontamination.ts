import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { DecontaminationState, WorkOrder } from '../domain/work-order.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { requireWorkOrderById } from './require-work-order-by-id.ts'
import { workOrder } from './schema/work-order.ts'

/**
 * Records what the customer or the workshop states about the last fluid; can be restated while
 * the order is at work, and the audit trail keeps both statements.
 * @throws AppError conflict `not-open` once the order is released, dispatched or withdrawn
 */
export function stateDecontamination(
  store: Store,
  stated: {
    readonly workOrderId: number
    readonly decontamination: DecontaminationState
    readonly lastFluid: string
  },
  actor: Actor,
): WorkOrder {
  const { workOrderId, decontamination, lastFluid } = stated
  return store.transact(() => {
    const order = requireWorkOrderById(store, workOrderId)
    if (['released', 'dispatched', 'withdrawn'].includes(order.stage)) {
      throw new AppError('conflict', 'not-open', { number: order.number })
    }
    store.db
      .update(workOrder)
      .set({ decontamination, lastFluid })
      .where(eq(workOrder.id, order.id))
      .run()
    const before = { decontamination: order.decontamination, lastFluid: order.lastFluid }
    const detail = { before, after: { decontamination, lastFluid } }
    addAudit(store, actor, { act: 'state-decontamination', subject: order.number, detail })
    return requireWorkOrderById(store, order.id)
  })
}
