import { asc, eq } from 'drizzle-orm'
import type { RunSample } from '../domain/dynamic-run.ts'
import type { Store } from './open.ts'
import { dynamicRunBatch } from './schema/dynamic-run-batch.ts'

/** Every batch of readings of a run, in the order in which they came. */
export function readRunBatches(store: Store, runId: number): RunSample[][] {
  return store.db
    .select({ samples: dynamicRunBatch.samples })
    .from(dynamicRunBatch)
    .where(eq(dynamicRunBatch.dynamicRunId, runId))
    .orderBy(asc(dynamicRunBatch.id))
    .all()
    .map((one) => JSON.parse(one.samples) as RunSample[])
}
