import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { Assembly } from '../domain/assembly.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { assembly } from './schema/assembly.ts'

const later = alias(assembly, 'later')

const ofOrder = prepared((store) =>
  store.db
    .select({ row: assembly, replacedById: later.id })
    .from(assembly)
    .leftJoin(later, eq(later.replacesId, assembly.id))
    .where(eq(assembly.workOrderId, sql.placeholder('id')))
    .orderBy(asc(assembly.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listAssemblies(store: Store, workOrderId: number): Assembly[] {
  return ofOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
