import type { Actor } from '../domain/actor.ts'
import type { LapCycle, NewLapCycle } from '../domain/lap-cycle.ts'
import { addAudit } from './add-audit.ts'
import { listLapCycles } from './list-lap-cycles.ts'
import { moveToBench } from './move-to-bench.ts'
import type { Store } from './open.ts'
import { requireFace } from './require-face.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { lapCycle } from './schema/lap-cycle.ts'

/**
 * Records a lap cycle of a face; the order moves to lapping.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` (the face or the replaced
 *   cycle belongs to another order), `already-replaced`
 */
export function addLapCycle(store: Store, fresh: NewLapCycle, actor: Actor): LapCycle {
  const recordedById = requireUserId(actor, 'addLapCycle')
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    requireFace(store, fresh.componentId, order.sealId)
    if (fresh.replacesId !== null) {
      requireReplaceable(listLapCycles(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(lapCycle)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    moveToBench(store, order, 'lapping', actor)
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-lap-cycle' : 'correct-lap-cycle'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
