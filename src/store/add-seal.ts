import { and, eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { NewSeal, Seal } from '../domain/seal.ts'
import { addAudit } from './add-audit.ts'
import { findSealBySerial } from './find-seal-by-serial.ts'
import type { Store } from './open.ts'
import { requireSeal } from './require-seal.ts'
import { component } from './schema/component.ts'
import { equipment } from './schema/equipment.ts'
import { seal } from './schema/seal.ts'

/**
 * A seal with its components.
 * @throws AppError conflict `serial-taken` where the customer has this serial already;
 *   not-found `no-equipment` where the position is another customer's
 */
export function addSeal(store: Store, fresh: NewSeal, actor: Actor): Seal {
  const { components, ...row } = fresh
  return store.transact(() => {
    if (findSealBySerial(store, fresh.customerId, fresh.serial) !== undefined) {
      throw new AppError('conflict', 'serial-taken', { serial: fresh.serial })
    }
    if (fresh.equipmentId !== null) requireOwnEquipment(store, fresh.equipmentId, fresh.customerId)
    const { id } = store.db.insert(seal).values(row).returning({ id: seal.id }).get()
    for (const one of components) {
      store.db
        .insert(component)
        .values({ ...one, sealId: id })
        .run()
    }
    const added = requireSeal(store, id)
    addAudit(store, actor, { act: 'add-seal', subject: `seal ${id}`, detail: added })
    return added
  })
}

function requireOwnEquipment(store: Store, id: number, customerId: number): void {
  const isOwn = and(eq(equipment.id, id), eq(equipment.customerId, customerId))
  const found = store.db.select({ id: equipment.id }).from(equipment).where(isOwn).get()
  if (found === undefined) throw new AppError('not-found', 'no-equipment')
}
