import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { ParsedUseException } from '../domain/parse-use-exception.ts'
import type { UseException } from '../domain/use-exception.ts'
import type { User } from '../domain/user.ts'
import { addAudit } from './add-audit.ts'
import { listUseExceptions } from './list-use-exceptions.ts'
import type { Store } from './open.ts'
import { requireInstrument } from './require-instrument.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireUseException } from './require-use-exception.ts'
import { useException } from './schema/use-exception.ts'

/**
 * Asks an inspector to allow an instrument for one order in spite of a fault.
 * @throws AppError not-found `no-work-order`, `no-instrument`; conflict `not-open`,
 *   `already-asked` where the same was asked and not answered yet
 */
export function addUseException(
  store: Store,
  fresh: ParsedUseException & { readonly workOrderId: number; readonly by: User },
  actor: Actor,
): UseException {
  const { workOrderId, instrumentId, fault, reason, by } = fresh
  return store.transact(() => {
    const order = requireOpenOrder(store, workOrderId)
    requireInstrument(store, instrumentId)
    const isAsked = listUseExceptions(store, workOrderId).some(
      (one) => one.instrumentId === instrumentId && one.fault === fault && one.answer === null,
    )
    if (isAsked) throw new AppError('conflict', 'already-asked')
    const asked = { askedById: by.id, askedByName: by.displayName, askedAt: actor.at }
    const row = { workOrderId, instrumentId, fault, reason, ...asked }
    const added = store.db.insert(useException).values(row).returning().get()
    addAudit(store, actor, { act: 'ask-use-exception', subject: order.number, detail: added })
    return requireUseException(store, added.id)
  })
}
