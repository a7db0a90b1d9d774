import { and, eq } from 'drizzle-orm'
import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Equipment, NewEquipment } from '../domain/equipment.ts'
import { addAudit } from './add-audit.ts'
import type { Store } from './open.ts'
import { equipment } from './schema/equipment.ts'

/** @throws AppError conflict `tag-taken` where the customer has this tag already */
export function addEquipment(store: Store, fresh: NewEquipment, actor: Actor): Equipment {
  return store.transact(() => {
    const isSame = and(eq(equipment.customerId, fresh.customerId), eq(equipment.tag, fresh.tag))
    if (store.db.select().from(equipment).where(isSame).get() !== undefined) {
      throw new AppError('conflict', 'tag-taken', { tag: fresh.tag })
    }
    const added = store.db.insert(equipment).values(fresh).returning().get()
    const subject = `equipment ${added.id}`
    addAudit(store, actor, { act: 'add-equipment', subject, detail: added })
    return added
  })
}
