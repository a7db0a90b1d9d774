import type { Actor } from '../domain/actor.ts'
import type { CompleteWearTrack } from '../domain/complete-wear-track.ts'
import type { WearTrack } from '../domain/wear-track.ts'
import { addAudit } from './add-audit.ts'
import { listWearTracks } from './list-wear-tracks.ts'
import { moveToStrip } from './move-to-strip.ts'
import type { Store } from './open.ts'
import { requireFace } from './require-face.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { wearTrack } from './schema/wear-track.ts'

/**
 * Records the worn track on a face; an order just received is stripped from then on.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` (what it names belongs to
 *   another order), `already-replaced`
 */
export function addWearTrack(store: Store, fresh: CompleteWearTrack, actor: Actor): WearTrack {
  const recordedById = requireUserId(actor, 'addWearTrack')
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    requireFace(store, fresh.componentId, order.sealId)
    moveToStrip(store, order, actor)
    if (fresh.replacesId !== null) {
      requireReplaceable(listWearTracks(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(wearTrack)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-wear-track' : 'correct-wear-track'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
