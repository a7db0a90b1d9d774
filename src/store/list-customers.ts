import { asc, sql } from 'drizzle-orm'
import type { Customer } from '../domain/customer.ts'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'

/** By name. */
export function listCustomers(store: Store): Customer[] {
  return store.db
    .select()
    .from(customer)
    .orderBy(asc(sql`${customer.name} COLLATE NOCASE`))
    .all()
}
