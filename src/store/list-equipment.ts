import { asc, eq } from 'drizzle-orm'
import type { Equipment } from '../domain/equipment.ts'
import type { Store } from './open.ts'
import { equipment } from './schema/equipment.ts'

/** Of one customer, by tag. */
export function listEquipment(store: Store, customerId: number): Equipment[] {
  return store.db
    .select()
    .from(equipment)
    .where(eq(equipment.customerId, customerId))
    .orderBy(asc(equipment.tag))
    .all()
}
