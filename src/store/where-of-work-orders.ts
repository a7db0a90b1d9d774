import { and, eq, lt, type SQL, sql } from 'drizzle-orm'
import { cursorId } from './cursor-id.ts'
import { customer } from './schema/customer.ts'
import { equipment } from './schema/equipment.ts'
import { seal } from './schema/seal.ts'
import { workOrder } from './schema/work-order.ts'
import type { WorkOrderFilter } from './work-order-filter.ts'

export function whereOf(filter: WorkOrderFilter): SQL | undefined {
  const { stage, customerId, sealId, q, cursor } = filter
  const text = q?.trim() ?? ''
  return and(
    stage === undefined ? undefined : eq(workOrder.stage, stage),
    customerId === undefined ? undefined : eq(workOrder.customerId, customerId),
    sealId === undefined ? undefined : eq(workOrder.sealId, sealId),
    cursor === undefined ? undefined : lt(workOrder.id, cursorId(cursor)),
    text === '' ? undefined : isLike(text),
  )
}

/** `%` and `_` are meant as typed; LIKE is blind to capitals from A to Z. */
function isLike(text: string): SQL {
  const part = `%${text.replaceAll(/[\\%_]/g, (sign) => `\\${sign}`)}%`
  const columns = [
    workOrder.number,
    workOrder.customerOrder,
    seal.serial,
    equipment.tag,
    customer.name,
  ]
  const each = columns.map((column) => sql`${column} LIKE ${part} ESCAPE '\\'`)
  return sql`(${sql.join(each, sql` OR `)})`
}
