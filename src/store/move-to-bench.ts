import type { Actor } from '../domain/actor.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import { changeStage } from './change-stage.ts'
import type { Store } from './open.ts'

/** Recording work moves the order to where that work is done, if it is not there already. */
export function moveToBench(
  store: Store,
  order: WorkOrder,
  to: 'lapping' | 'testing',
  actor: Actor,
): void {
  if (order.stage !== to) changeStage(store, order, { to, reason: '' }, actor)
}
