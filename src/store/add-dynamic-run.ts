import type { Actor } from '../domain/actor.ts'
import type { NewDynamicRun, RunSample } from '../domain/dynamic-run.ts'
import { addAudit } from './add-audit.ts'
import { addRunSamples } from './add-run-samples.ts'
import { listDynamicRuns } from './list-dynamic-runs.ts'
import { moveToBench } from './move-to-bench.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { dynamicRun } from './schema/dynamic-run.ts'

/**
 * Begins a run, with the readings that came with it, and moves the order to testing.
 * @throws AppError conflict `not-open`, `not-in-order`, `already-replaced`
 */
export function addDynamicRun(
  store: Store,
  fresh: NewDynamicRun,
  samples: readonly RunSample[],
  actor: Actor,
): { readonly id: number } {
  const recordedById = requireUserId(actor, 'addDynamicRun')
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    if (fresh.replacesId !== null) {
      requireReplaceable(listDynamicRuns(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(dynamicRun)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    moveToBench(store, order, 'testing', actor)
    const act = fresh.replacesId === null ? 'add-dynamic-run' : 'correct-dynamic-run'
    addAudit(store, actor, { act, subject: order.number, detail: row })
    if (samples.length > 0) addRunSamples(store, row, samples, actor)
    return { id: row.id }
  })
}
