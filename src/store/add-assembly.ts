import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Assembly, NewAssembly } from '../domain/assembly.ts'
import { completeAssembly } from '../domain/complete-assembly.ts'
import { solidLengthOf } from '../domain/solid-length-of.ts'
import { addAudit } from './add-audit.ts'
import { listAssemblies } from './list-assemblies.ts'
import { listSpringChecks } from './list-spring-checks.ts'
import type { Store } from './open.ts'
import { requireOpenOrder } from './require-open-order.ts'
import { requireOutOfQuarantine } from './require-out-of-quarantine.ts'
import { requireReplaceable } from './require-replaceable.ts'
import { requireUserId } from './require-user-id.ts'
import { assembly } from './schema/assembly.ts'

/**
 * Records how a seal was put together, with its load by the check of springs that stands at that
 * moment; the order stays where it stands.
 * @throws AppError conflict `not-open`, `in-quarantine`, `not-in-order` (what it names belongs to
 *   another order), `already-replaced`, `springs-changed-meanwhile` (solid at this length)
 */
export function addAssembly(store: Store, fresh: NewAssembly, actor: Actor): Assembly {
  const recordedById = requireUserId(actor, 'addAssembly')
  return store.transact(() => {
    const order = requireOutOfQuarantine(requireOpenOrder(store, fresh.workOrderId))
    if (fresh.replacesId !== null) {
      requireReplaceable(listAssemblies(store, order.id), fresh.replacesId)
    }
    const checks = listSpringChecks(store, order.id)
    const solid = solidLengthOf(checks)
    if (solid !== null && fresh.workingLength.mm < solid.mm) {
      throw new AppError('conflict', 'springs-changed-meanwhile')
    }
    const recorded = { recordedById, recordedByName: actor.name, recordedAt: actor.at }
    const row = store.db
      .insert(assembly)
      .values({ ...completeAssembly(fresh, checks), ...recorded })
      .returning()
      .get()
    const added = { ...row, replacedById: null }
    const act = fresh.replacesId === null ? 'add-assembly' : 'correct-assembly'
    addAudit(store, actor, { act, subject: order.number, detail: added })
    return added
  })
}
