import type { Actor } from '../domain/actor.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import { changeStage } from './change-stage.ts'
import type { Store } from './open.ts'

/** What is found inside a seal says that it is stripped; an order further on stays where it is. */
export function moveToStrip(store: Store, order: WorkOrder, actor: Actor): void {
  if (order.stage === 'received') changeStage(store, order, { to: 'stripped', reason: '' }, actor)
}
