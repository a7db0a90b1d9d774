import { eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Equipment } from '../domain/equipment.ts'
import type { Store } from './open.ts'
import { equipment } from './schema/equipment.ts'

/** @throws AppError not-found `no-equipment` */
export function requireEquipment(store: Store, id: number): Equipment {
  const found = store.db.select().from(equipment).where(eq(equipment.id, id)).get()
  if (found === undefined) throw new AppError('not-found', 'no-equipment')
  return found
}
