import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { heldInQuarantine } from '../domain/held-in-quarantine.ts'
import type { Stage } from '../domain/stage.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import { changeStage } from './change-stage.ts'
import type { Store } from './open.ts'
import { requireWorkOrderById } from './require-work-order-by-id.ts'

/** Stages that come from an act of their own: hand-over and the inspector's decision. */
const signedStages: readonly Stage[] = ['handed-over', 'released', 'refused']

/**
 * Moves an order by hand: to stripped, lapping, testing, dispatched or withdrawn.
 * @throws AppError conflict `stage-not-next`, or `decontamination-not-stated` where the seal would
 *   be opened; invalid `reason-needed` where an order is withdrawn without one
 */
export function moveWorkOrder(
  store: Store,
  move: { readonly workOrderId: number; readonly to: Stage; readonly reason: string },
  actor: Actor,
): WorkOrder {
  return store.transact(() => {
    const order = requireWorkOrderById(store, move.workOrderId)
    if (signedStages.includes(move.to)) {
      throw new AppError('conflict', 'stage-not-next', { from: order.stage, to: move.to })
    }
    if (move.to === 'withdrawn' && move.reason.trim() === '') {
      throw new AppError('invalid', 'reason-needed')
    }
    if (heldInQuarantine(order, move.to)) {
      throw new AppError('conflict', 'decontamination-not-stated', { number: order.number })
    }
    changeStage(store, order, move, actor)
    return requireWorkOrderById(store, order.id)
  })
}
