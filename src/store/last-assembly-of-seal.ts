import { and, desc, eq, isNull, lt } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import type { Assembly } from '../domain/assembly.ts'
import type { WorkOrder } from '../domain/work-order.ts'
import type { Store } from './open.ts'
import { assembly } from './schema/assembly.ts'
import { workOrder } from './schema/work-order.ts'

const later = alias(assembly, 'later')

/** The newest standing one of this order, or else of the orders of the same seal before it. */
export function lastAssemblyOfSeal(
  { db }: Store,
  { id, sealId }: Pick<WorkOrder, 'id' | 'sealId'>,
): Assembly | undefined {
  const found = db
    .select({ row: assembly })
    .from(assembly)
    .innerJoin(workOrder, eq(workOrder.id, assembly.workOrderId))
    .leftJoin(later, eq(later.replacesId, assembly.id))
    .where(and(eq(workOrder.sealId, sealId), lt(workOrder.id, id + 1), isNull(later.id)))
    .orderBy(desc(assembly.workOrderId), desc(assembly.id))
    .limit(1)
    .get()
  return found === undefined ? undefined : { ...found.row, replacedById: null }
}
