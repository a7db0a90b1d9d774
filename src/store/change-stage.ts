import { eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { type Stage, stageTransitions } from '../domain/stage.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import { addAudit } from './add-audit.ts'
import { addStageChange } from './add-stage-change.ts'
import type { Store } from './open.ts'
import { workOrder } from './schema/work-order.ts'

/**
 * Moves an order inside the transaction of the act that moves it.
 * @throws AppError conflict `stage-not-next` where the stage may not follow
 */
export function changeStage(
  store: Store,
  order: WorkOrder,
  move: { readonly to: Stage; readonly reason: string },
  actor: Actor,
): void {
  const { to, reason } = move
  if (!stageTransitions[order.stage].includes(to)) {
    throw new AppError('conflict', 'stage-not-next', { from: order.stage, to })
  }
  addStageChange(store, { workOrderId: order.id, from: order.stage, to, reason }, actor)
  store.db.update(workOrder).set({ stage: to }).where(eq(workOrder.id, order.id)).run()
  const detail = { from: order.stage, to, reason }
  addAudit(store, actor, { act: 'change-stage', subject: order.number, detail })
}
