import { eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { User } from '../domain/user.ts'
import { maySeeCustomer } from '../domain/who-may-see.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { workOrder } from './schema/work-order.ts'

const orderByNumber = prepared((store) =>
  store.db
    .select()
    .from(workOrder)
    .where(eq(workOrder.number, sql.placeholder('number')))
    .prepare(),
)

/** @throws AppError not-found `no-work-order`, also where the viewer is another customer */
export function requireWorkOrder(store: Store, number: string, viewer: User): WorkOrder {
  const found = orderByNumber(store).get({ number })
  if (found === undefined || !maySeeCustomer(viewer, found.customerId)) {
    throw new AppError('not-found', 'no-work-order')
  }
  return found
}
