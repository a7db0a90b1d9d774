import { AppError } from '../domain/app-error.ts'
import { openStages } from '../domain/stage.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { requireWorkOrderById } from './require-work-order-by-id.ts'

/**
 * The order, where work may be recorded on it.
 * @throws AppError not-found `no-work-order`; conflict `not-open`
 */
export function requireOpenOrder(store: Store, workOrderId: number): WorkOrder {
  const order = requireWorkOrderById(store, workOrderId)
  if (openStages.includes(order.stage)) return order
  throw new AppError('conflict', 'not-open', { number: order.number })
}
