import { sql } from 'drizzle-orm'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { dynamicRunBatch as batch } from './schema/dynamic-run-batch.ts'

const latest = prepared((store) =>
  store.db
    .select({ id: sql<number | null>`max(${batch.id})` })
    .from(batch)
    .where(sql`${batch.dynamicRunId} = ${sql.placeholder('run')}`)
    .prepare(),
)

/** Number of the last batch of a run; 0 before the first. */
export function latestRunBatch(store: Store, runId: number): number {
  return latest(store).get({ run: runId })?.id ?? 0
}
