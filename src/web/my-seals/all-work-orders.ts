import type { WorkOrderLine } from '../../domain/work-order-line.ts'
import { listWorkOrders } from '../../store/list-work-orders.ts'
import type { Store } from '../../store/open.ts'
import type { WorkOrderFilter } from '../../store/work-order-filter.ts'

/** Every order that a filter finds, newest first, page after page. */
export function allWorkOrders(
  store: Store,
  filter: Pick<WorkOrderFilter, 'customerId' | 'sealId'>,
): readonly WorkOrderLine[] {
  const lines: WorkOrderLine[] = []
  for (let cursor: string | null = ''; cursor !== null; ) {
    const part = { ...filter, limit: 500, ...(cursor === '' ? {} : { cursor }) }
    const { items, nextCursor } = listWorkOrders(store, part)
    lines.push(...items)
    cursor = nextCursor
  }
  return lines
}
