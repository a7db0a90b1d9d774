import { eq, type SQL } from 'drizzle-orm'
import type { WorkOrderLine } from '../domain/work-order-line.ts'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'
import { equipment } from './schema/equipment.ts'
import { seal } from './schema/seal.ts'
import { workOrder } from './schema/work-order.ts'

/** The query behind the list: the test asks the database how it runs it. */
export function selectLines(store: Store, where: SQL | undefined) {
  return store.db
    .select({
      order: workOrder,
      customerName: customer.name,
      sealSerial: seal.serial,
      equipmentTag: equipment.tag,
    })
    .from(workOrder)
    .innerJoin(customer, eq(customer.id, workOrder.customerId))
    .innerJoin(seal, eq(seal.id, workOrder.sealId))
    .leftJoin(equipment, eq(equipment.id, seal.equipmentId))
    .where(where)
}

export function lineOf(row: {
  readonly order: typeof workOrder.$inferSelect
  readonly customerName: string
  readonly sealSerial: string
  readonly equipmentTag: string | null
}): WorkOrderLine {
  const { order, ...names } = row
  return { ...order, ...names }
}
