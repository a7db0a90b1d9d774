import { and, asc, eq, lt, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { LapCycle } from '../domain/lap-cycle.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { lapCycle } from './schema/lap-cycle.ts'
import { workOrder } from './schema/work-order.ts'

const later = alias(lapCycle, 'later')

const cyclesOfSeal = prepared((store) =>
  store.db
    .select({ row: lapCycle, replacedById: later.id })
    .from(lapCycle)
    .innerJoin(workOrder, eq(workOrder.id, lapCycle.workOrderId))
    .leftJoin(later, eq(later.replacesId, lapCycle.id))
    .where(
      and(
        eq(workOrder.sealId, sql.placeholder('sealId')),
        lt(lapCycle.workOrderId, sql.placeholder('before')),
      ),
    )
    .orderBy(asc(lapCycle.workOrderId), asc(lapCycle.id))
    .prepare(),
)

/** Of the orders of a seal that were received before this one, replaced cycles too. */
export function listEarlierLapCycles(
  store: Store,
  { id, sealId }: Pick<WorkOrder, 'id' | 'sealId'>,
): LapCycle[] {
  return cyclesOfSeal(store)
    .all({ sealId, before: id })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
