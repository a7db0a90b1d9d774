import { eq } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Customer } from '../domain/customer.ts'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'

/** @throws AppError not-found `no-customer` */
export function requireCustomer(store: Store, id: number): Customer {
  const found = store.db.select().from(customer).where(eq(customer.id, id)).get()
  if (found === undefined) throw new AppError('not-found', 'no-customer')
  return found
}
