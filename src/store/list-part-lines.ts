import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { PartLine } from '../domain/part-line.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { partLine } from './schema/part-line.ts'

const later = alias(partLine, 'later')

const ofOrder = prepared((store) =>
  store.db
    .select({ row: partLine, replacedById: later.id })
    .from(partLine)
    .leftJoin(later, eq(later.replacesId, partLine.id))
    .where(eq(partLine.workOrderId, sql.placeholder('id')))
    .orderBy(asc(partLine.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listPartLines(store: Store, workOrderId: number): PartLine[] {
  return ofOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
