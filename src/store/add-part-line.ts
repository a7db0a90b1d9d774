import type { Actor } from '../domain/actor.ts'
import type { NewPartLine, PartLine } from '../domain/part-line.ts'
import { addAudit } from './add-audit.ts'
import { listPartLines } from './list-part-lines.ts'
import { moveToStrip } from './move-to-strip.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { partLine } from './schema/part-line.ts'

/**
 * Records what becomes of a part; an order just received is stripped from then on.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` or `already-replaced` for
 *   what it replaces
 */
export function addPartLine(store: Store, fresh: NewPartLine, actor: Actor): PartLine {
  const recordedById = requireUserId(actor, 'addPartLine')
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    if (fresh.replacesId !== null) {
      requireReplaceable(listPartLines(store, order.id), fresh.replacesId)
    }
    moveToStrip(store, order, actor)
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(partLine)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-part-line' : 'correct-part-line'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
