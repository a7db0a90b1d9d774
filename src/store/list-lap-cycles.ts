import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { LapCycle } from '../domain/lap-cycle.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { lapCycle } from './schema/lap-cycle.ts'

const later = alias(lapCycle, 'later')

const cyclesOfOrder = prepared((store) =>
  store.db
    .select({ row: lapCycle, replacedById: later.id })
    .from(lapCycle)
    .leftJoin(later, eq(later.replacesId, lapCycle.id))
    .where(eq(lapCycle.workOrderId, sql.placeholder('id')))
    .orderBy(asc(lapCycle.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listLapCycles(store: Store, workOrderId: number): LapCycle[] {
  return cyclesOfOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
