import { eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Equipment } from '../domain/equipment.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { equipment } from './schema/equipment.ts'

const equipmentById = prepared((store) =>
  store.db
    .select()
    .from(equipment)
    .where(eq(equipment.id, sql.placeholder('id')))
    .prepare(),
)

/** @throws AppError not-found `no-equipment` */
export function requireEquipment(store: Store, id: number): Equipment {
  const found = equipmentById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-equipment')
  return found
}
