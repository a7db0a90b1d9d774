import { eq } from 'drizzle-orm'
import type { Customer } from '../domain/customer.ts'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'

/** Without regard to capitals (A to Z). */
export function findCustomerByName(store: Store, name: string): Customer | undefined {
  return store.db.select().from(customer).where(eq(customer.name, name)).get()
}
