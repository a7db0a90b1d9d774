import { eq } from 'drizzle-orm'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'

/** Says whether the store holds the invented workshop: it must then not be open to a network. */
export function hasInventedData(store: Store): boolean {
  const found = store.db
    .select({ id: customer.id })
    .from(customer)
    .where(eq(customer.isInvented, true))
    .limit(1)
    .get()
  return found !== undefined
}
