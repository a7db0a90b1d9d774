import { asc, eq, sql } from 'drizzle-orm'
import type { Decision } from '../domain/release.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { decision } from './schema/decision.ts'

const decisionsOfOrder = prepared((store) =>
  store.db
    .select()
    .from(decision)
    .where(eq(decision.workOrderId, sql.placeholder('id')))
    .orderBy(asc(decision.id))
    .prepare(),
)

/** Oldest first. */
export function listDecisions(store: Store, workOrderId: number): Decision[] {
  return decisionsOfOrder(store).all({ id: workOrderId })
}
