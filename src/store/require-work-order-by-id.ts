import { eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { workOrder } from './schema/work-order.ts'

const orderById = prepared((store) =>
  store.db
    .select()
    .from(workOrder)
    .where(eq(workOrder.id, sql.placeholder('id')))
    .prepare(),
)

/** For the store's own use: asks nobody who looks. @throws AppError not-found `no-work-order` */
export function requireWorkOrderById(store: Store, id: number): WorkOrder {
  const found = orderById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-work-order')
  return found
}
