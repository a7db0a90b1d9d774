import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { StaticTest } from '../domain/static-test.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { staticTest } from './schema/static-test.ts'

const later = alias(staticTest, 'later')

const testsOfOrder = prepared((store) =>
  store.db
    .select({ row: staticTest, replacedById: later.id })
    .from(staticTest)
    .leftJoin(later, eq(later.replacesId, staticTest.id))
    .where(eq(staticTest.workOrderId, sql.placeholder('id')))
    .orderBy(asc(staticTest.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listStaticTests(store: Store, workOrderId: number): StaticTest[] {
  return testsOfOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
