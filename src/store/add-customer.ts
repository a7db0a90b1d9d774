import type { Actor } from '../domain/actor.ts'
import { AppError } from '../domain/app-error.ts'
import type { Customer, NewCustomer } from '../domain/customer.ts'
import { addAudit } from './add-audit.ts'
import { findCustomerByName } from './find-customer-by-name.ts'
import type { Store } from './open.ts'
import { customer } from './schema/customer.ts'

/** @throws AppError conflict `name-taken` */
export function addCustomer(store: Store, fresh: NewCustomer, actor: Actor): Customer {
  return store.transact(() => {
    if (findCustomerByName(store, fresh.name) !== undefined) {
      throw new AppError('conflict', 'name-taken', { name: fresh.name })
    }
    const added = store.db.insert(customer).values(fresh).returning().get()
    addAudit(store, actor, { act: 'add-customer', subject: `customer ${added.id}`, detail: added })
    return added
  })
}
