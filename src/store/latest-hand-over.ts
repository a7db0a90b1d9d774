import { desc, eq, sql } from 'drizzle-orm'
import type { HandOver } from '../domain/release.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { handOver } from './schema/hand-over.ts'

const latestOfOrder = prepared((store) =>
  store.db
    .select()
    .from(handOver)
    .where(eq(handOver.workOrderId, sql.placeholder('id')))
    .orderBy(desc(handOver.id))
    .limit(1)
    .prepare(),
)

/** Undefined where the order was never handed over. */
export function latestHandOver(store: Store, workOrderId: number): HandOver | undefined {
  return latestOfOrder(store).get({ id: workOrderId })
}
