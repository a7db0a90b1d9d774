import type { Actor } from '../domain/actor.ts'
import type { RunSample } from '../domain/dynamic-run.ts'
import { addAudit } from './add-audit.ts'
import { fileHash } from './file-hash.ts'
import { listDynamicRuns } from './list-dynamic-runs.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { dynamicRunBatch } from './schema/dynamic-run-batch.ts'

/**
 * Keeps a batch of readings of a run as they came.
 * @throws AppError conflict `not-open`, `already-replaced`
 */
export function addRunSamples(
  store: Store,
  run: { readonly id: number; readonly workOrderId: number },
  samples: readonly RunSample[],
  actor: Actor,
): { readonly id: number; readonly sampleCount: number } {
  const recordedById = requireUserId(actor, 'addRunSamples')
  return store.transact(() => {
    const order = requireOpenOrder(store, run.workOrderId)
    requireReplaceable(listDynamicRuns(store, order.id), run.id)
    const text = JSON.stringify(samples)
    const row = store.db
      .insert(dynamicRunBatch)
      .values({
        dynamicRunId: run.id,
        samples: text,
        sampleCount: samples.length,
        recordedById,
        recordedByName: actor.name,
        recordedAt: actor.at,
      })
      .returning()
      .get()
    const { samples: _, ...kept } = row
    // The trail holds their hash: a thousand readings are no line of it.
    const detail = { ...kept, samplesSha256: fileHash(Buffer.from(text)) }
    addAudit(store, actor, { act: 'add-run-samples', subject: order.number, detail })
    return { id: row.id, sampleCount: row.sampleCount }
  })
}
