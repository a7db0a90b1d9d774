import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import { missingForHandOver } from '../domain/missing-for-hand-over.ts'
import type { HandOver } from '../domain/release.ts'
import { addAudit } from './add-audit.ts'
import { changeStage } from './change-stage.ts'
import type { Store } from './open.ts'
import { readEvidence } from './read-evidence.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireUserId } from './require-user-id.ts'
import { handOver } from './schema/hand-over.ts'

/**
 * Hands an order over to the inspector. What is missing is asked again here, inside the
 * transaction: something may have been corrected since the page was shown.
 * @throws AppError conflict `not-open`, or `something-missing` with `kinds`
 */
export function addHandOver(
  store: Store,
  fresh: { readonly workOrderId: number; readonly note: string },
  actor: Actor,
): HandOver {
  const byId = requireUserId(actor, 'addHandOver')
  return store.transact(() => {
    const order = requireOpenOrder(store, fresh.workOrderId)
    const missing = missingForHandOver(readEvidence(store, order.id))
    if (missing.length > 0) {
      const kinds = missing.map((one) => one.kind).join(', ')
      throw new AppError('conflict', 'something-missing', { kinds })
    }
    const row = { workOrderId: order.id, byId, byName: actor.name, note: fresh.note, at: actor.at }
    const added = store.db.insert(handOver).values(row).returning().get()
    changeStage(store, order, { to: 'handed-over', reason: '' }, actor)
    addAudit(store, actor, { act: 'hand-over', subject: order.number, detail: added })
    return added
  })
}
