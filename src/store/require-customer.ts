import { eq, sql } from 'drizzle-orm'
import { AppError } from '../domain/app-error.ts'
import type { Customer } from '../domain/customer.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { customer } from './schema/customer.ts'

const customerById = prepared((store) =>
  store.db
    .select()
    .from(customer)
    .where(eq(customer.id, sql.placeholder('id')))
    .prepare(),
)

/** @throws AppError not-found `no-customer` */
export function requireCustomer(store: Store, id: number): Customer {
  const found = customerById(store).get({ id })
  if (found === undefined) throw new AppError('not-found', 'no-customer')
  return found
}
