import { desc } from 'drizzle-orm'
import type { WorkOrderLine } from '../domain/work-order-line.ts'
import type { Store } from './open.ts'
import { workOrder } from './schema/work-order.ts'
import { lineOf, selectLines } from './select-work-order-lines.ts'
import { whereOf } from './where-of-work-orders.ts'
import type { WorkOrderFilter } from './work-order-filter.ts'

export type WorkOrderPage = {
  readonly items: WorkOrderLine[]
  /** Null on the last page. */
  readonly nextCursor: string | null
}

/**
 * Newest first, one page.
 * @throws RangeError where the limit is not from 1 to 500
 */
export function listWorkOrders(store: Store, filter: WorkOrderFilter): WorkOrderPage {
  const { limit } = filter
  if (!(Number.isInteger(limit) && limit >= 1 && limit <= 500)) {
    throw new RangeError(`listWorkOrders requires limit from 1 to 500, got ${limit}`)
  }
  const found = selectLines(store, whereOf(filter))
    .orderBy(desc(workOrder.id))
    .limit(limit + 1)
    .all()
  const items = found.slice(0, limit).map(lineOf)
  const last = items.at(-1)
  return { items, nextCursor: found.length > limit && last ? String(last.id) : null }
}
