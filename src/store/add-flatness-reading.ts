import type { Actor } from '../domain/actor.ts'
import type { FlatnessReading } from '../domain/flatness.ts'
import { addAudit } from './add-audit.ts'
import { listFlatnessReadings } from './list-flatness-readings.ts'
import { moveToBench } from './move-to-bench.ts'
import type { Store } from './open.ts'
import { requireFace } from './require-face.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { flatnessDirection } from './schema/flatness-direction.ts'
import { flatnessReading } from './schema/flatness-reading.ts'

/** A reading with everything computed, before it stands in the record. */
export type FreshFlatnessReading = Omit<
  FlatnessReading,
  'id' | 'faceKind' | 'sees' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Records a light-band reading and moves the order to lapping.
 * @throws AppError conflict `not-open`, `not-in-order` (the face or the replaced reading belongs
 *   to another order), `already-replaced`
 */
export function addFlatnessReading(
  store: Store,
  fresh: FreshFlatnessReading,
  actor: Actor,
): FlatnessReading {
  const recordedById = requireUserId(actor, 'addFlatnessReading')
  const { directions, ...row } = fresh
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    requireFace(store, fresh.componentId, order.sealId)
    if (fresh.replacesId !== null) {
      requireReplaceable(listFlatnessReadings(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const { id } = store.db
      .insert(flatnessReading)
      .values({ ...row, ...recorded })
      .returning({ id: flatnessReading.id })
      .get()
    for (const one of directions) {
      store.db
        .insert(flatnessDirection)
        .values({ ...one, flatnessReadingId: id })
        .run()
    }
    moveToBench(store, order, 'lapping', actor)
    const added = listFlatnessReadings(store, order.id).at(-1)
    if (added?.id !== id) throw new RangeError('addFlatnessReading requires to find what it added')
    const act = fresh.replacesId === null ? 'add-flatness-reading' : 'correct-flatness-reading'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
