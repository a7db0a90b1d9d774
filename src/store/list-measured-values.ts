import { asc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { MeasuredValue } from '../domain/measured-value.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { measuredValue } from './schema/measured-value.ts'

const later = alias(measuredValue, 'later')

const valuesOfOrder = prepared((store) =>
  store.db
    .select({ row: measuredValue, replacedById: later.id })
    .from(measuredValue)
    .leftJoin(later, eq(later.replacesId, measuredValue.id))
    .where(eq(measuredValue.workOrderId, sql.placeholder('id')))
    .orderBy(asc(measuredValue.id))
    .prepare(),
)

/** All of an order, replaced ones too, oldest first. */
export function listMeasuredValues(store: Store, workOrderId: number): MeasuredValue[] {
  return valuesOfOrder(store)
    .all({ id: workOrderId })
    .map(({ row, replacedById }) => ({ ...row, replacedById }))
}
