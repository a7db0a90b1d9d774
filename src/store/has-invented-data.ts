import { eq } from 'drizzle-orm'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'

/** Whether the invented workshop, whose passwords are public, was ever loaded here. */
export function hasInventedData(store: Store): boolean {
  const isInvented = eq(customer.isInvented, true)
  return store.db.select({ id: customer.id }).from(customer).where(isInvented).get() !== undefined
}
