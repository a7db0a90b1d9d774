import { asc, eq, inArray, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { DynamicRun } from '../domain/dynamic-run.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { dynamicRun } from './schema/dynamic-run.ts'
import { dynamicRunBatch as batch } from './schema/dynamic-run-batch.ts'

const later = alias(dynamicRun, 'later')

const ofOrder = prepared((store) =>
  store.db
    .select({ row: dynamicRun, replacedById: later.id })
    .from(dynamicRun)
    .leftJoin(later, eq(later.replacesId, dynamicRun.id))
    .where(eq(dynamicRun.workOrderId, sql.placeholder('id')))
    .orderBy(asc(dynamicRun.id))
    .prepare(),
)

/** All runs of an order, replaced ones too, oldest first; without their readings. */
export function listDynamicRuns(store: Store, workOrderId: number): DynamicRun[] {
  const runs = ofOrder(store).all({ id: workOrderId })
  if (runs.length === 0) return []
  const ids = runs.map(({ row }) => row.id)
  const counts = store.db
    .select({
      runId: batch.dynamicRunId,
      by: batch.recordedById,
      count: sql<number>`sum(${batch.sampleCount})`,
    })
    .from(batch)
    .where(inArray(batch.dynamicRunId, ids))
    .groupBy(batch.dynamicRunId, batch.recordedById)
    .all()
  return runs.map(({ row, replacedById }) => {
    const own = counts.filter((one) => one.runId === row.id)
    return {
      ...row,
      replacedById,
      sampleCount: own.reduce((sum, one) => sum + one.count, 0),
      hands: [...new Set([row.recordedById, ...own.map((one) => one.by)])],
    }
  })
}
