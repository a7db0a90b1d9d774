import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { Finding } from '../domain/finding.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { finding } from './schema/finding.ts'

const later = alias(finding, 'later')

const ofOrder = prepared((store) =>
  store.db
    .select({ row: finding, replacedById: later.id })
    .from(finding)
    .leftJoin(later, eq(later.replacesId, finding.id))
    .where(eq(finding.workOrderId, sql.placeholder('id')))
    .orderBy(asc(finding.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listFindings(store: Store, workOrderId: number): Finding[] {
  return ofOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
