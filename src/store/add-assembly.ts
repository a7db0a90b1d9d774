import type { Actor } from '../domain/actor.ts'
import type { Assembly } from '../domain/assembly.ts'
import type { CompleteAssembly } from '../domain/complete-assembly.ts'
import { addAudit } from './add-audit.ts'
import { listAssemblies } from './list-assemblies.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { assembly } from './schema/assembly.ts'

/**
 * Records how a seal was put together; the order stays where it stands.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` (what it names belongs to
 *   another order), `already-replaced`
 */
export function addAssembly(store: Store, fresh: CompleteAssembly, actor: Actor): Assembly {
  const recordedById = requireUserId(actor, 'addAssembly')
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    if (fresh.replacesId !== null) {
      requireReplaceable(listAssemblies(store, order.id), fresh.replacesId)
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(assembly)
      .values({ ...fresh, ...recorded })
      .returning()
      .get()
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-assembly' : 'correct-assembly'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
