import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { SpringCheck } from '../domain/spring-check.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { springCheck } from './schema/spring-check.ts'

const later = alias(springCheck, 'later')

const ofOrder = prepared((store) =>
  store.db
    .select({ row: springCheck, replacedById: later.id })
    .from(springCheck)
    .leftJoin(later, eq(later.replacesId, springCheck.id))
    .where(eq(springCheck.workOrderId, sql.placeholder('id')))
    .orderBy(asc(springCheck.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listSpringChecks(store: Store, workOrderId: number): SpringCheck[] {
  return ofOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
