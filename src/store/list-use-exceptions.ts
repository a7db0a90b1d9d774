import { asc, eq } from 'drizzle-orm'
import type { UseException } from '../domain/use-exception.ts'
import type { Store } from './open.ts'
import { useException } from './schema/use-exception.ts'
import { asUseException, useExceptionsQuery } from './use-exceptions-query.ts'

/** All of an order, answered or not, oldest first. */
export function listUseExceptions(store: Store, workOrderId: number): UseException[] {
  return useExceptionsQuery(store)
    .where(eq(useException.workOrderId, workOrderId))
    .orderBy(asc(useException.id))
    .all()
    .map(asUseException)
}
