import { asc, eq, sql } from 'drizzle-orm'
import type { Concession } from '../domain/concession.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { concession } from './schema/concession.ts'

const concessionsOfOrder = prepared((store) =>
  store.db
    .select()
    .from(concession)
    .where(eq(concession.workOrderId, sql.placeholder('id')))
    .orderBy(asc(concession.id))
    .prepare(),
)

/** All of an order, oldest first. */
export function listConcessions(store: Store, workOrderId: number): Concession[] {
  return concessionsOfOrder(store).all({ id: workOrderId })
}
