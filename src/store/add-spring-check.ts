import type { Actor } from '../domain/actor.ts'
import type { CompleteSpringCheck } from '../domain/complete-spring-check.ts'
import type { SpringCheck } from '../domain/spring-check.ts'
import { addAudit } from './add-audit.ts'
import { listSpringChecks } from './list-spring-checks.ts'
import { moveToStrip } from './move-to-strip.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { springCheck } from './schema/spring-check.ts'

/**
 * Records a spring of the bench; an order just received is stripped from then on.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` (what it names belongs to
 *   another order), `already-replaced`
 */
export function addSpringCheck(
  store: Store,
  fresh: CompleteSpringCheck,
  actor: Actor,
): SpringCheck {
  const recordedById = requireUserId(actor, 'addSpringCheck')
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    moveToStrip(store, order, actor)
    if (fresh.replacesId !== null) {
      requireReplaceable(listSpringChecks(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(springCheck)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-spring-check' : 'correct-spring-check'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
