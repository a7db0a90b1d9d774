import { asc, eq, sql } from 'drizzle-orm'
import type { StageChange } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { stageChange } from './schema/stage-change.ts'

const changesOfOrder = prepared((store) =>
  store.db
    .select()
    .from(stageChange)
    .where(eq(stageChange.workOrderId, sql.placeholder('id')))
    .orderBy(asc(stageChange.id))
    .prepare(),
)

/** Oldest first. */
export function listStageChanges(store: Store, workOrderId: number): StageChange[] {
  return changesOfOrder(store).all({ id: workOrderId })
}
