import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { FlatnessReading } from '../domain/flatness.ts'
import { addAudit } from './add-audit.ts'
import { listFlatnessReadings } from './list-flatness-readings.ts'
import { moveToBench } from './move-to-bench.ts'
import type { Store } from './open.ts'
import { requireFace } from './require-face.ts'
import { requireFacePhoto } from './require-face-photo.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { flatnessDirection } from './schema/flatness-direction.ts'
import { flatnessReading } from './schema/flatness-reading.ts'
import { wholeFace } from './schema/whole-face.ts'

/** A reading with everything computed, before it stands in the record. */
export type FreshFlatnessReading = Omit<
  FlatnessReading,
  'id' | 'faceKind' | 'sees' | 'recordedById' | 'recordedByName' | 'recordedAt' | 'replacedById'
>

/**
 * Records a reading of light bands, counted or of the whole face, and moves the order to lapping.
 * @throws AppError conflict `not-open`, `not-in-order` (the face or the replaced reading belongs
 *   to another order), `already-replaced`; `not-of-face` for a photograph of another face
 */
export function addFlatnessReading(
  store: Store,
  fresh: FreshFlatnessReading,
  actor: Actor,
): FlatnessReading {
  const recordedById = requireUserId(actor, 'addFlatnessReading')
  const { directions, wholeFace: whole, ...row } = fresh
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
    if (whole !== null) {
      const { kind } = whole.source
      const photoId = 'photoId' in whole.source ? whole.source.photoId : null
      if (photoId !== null) requirePhotoOfFace(store, fresh, photoId)
      const keys = { flatnessReadingId: id, workOrderId: order.id, kind, photoId }
      store.db
        .insert(wholeFace)
        .values({ ...keys, details: whole })
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

function requirePhotoOfFace(store: Store, fresh: FreshFlatnessReading, photoId: number): void {
  const photo = requireFacePhoto(store, fresh.workOrderId, photoId)
  if (photo.componentId !== fresh.componentId) throw new AppError('conflict', 'not-of-face')
}
