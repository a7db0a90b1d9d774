import { readFileSync } from 'node:fs'
import { adminWords } from '../../views/words/en/admin.ts'
import { passwordLength } from '../domain/password-length.ts'
import { type Role, roles } from '../domain/role.ts'
import { addUser } from '../store/add-user.ts'
import { findCustomerByName } from '../store/find-customer-by-name.ts'
import type { Store } from '../store/open.ts'
import { hashPassword } from '../web/password.ts'
import { operator, withStore } from './operator.ts'
import { Refused } from './refused.ts'
import { UsageError } from './usage-error.ts'

export type UserOptions = {
  readonly name?: string | undefined
  readonly role?: string | undefined
  readonly customer?: string | undefined
  readonly display?: string | undefined
  readonly department?: string | undefined
}

/** Adds a person; the password comes by standard input, where no process list shows it. */
export async function userAdd(options: UserOptions): Promise<string> {
  const name = options.name?.trim() ?? ''
  if (name === '') throw new UsageError(adminWords.missing('--name'))
  if (options.role === undefined) throw new UsageError(adminWords.missing('--role'))
  const role = roles.find((one) => one === options.role)
  if (role === undefined) throw new UsageError(adminWords.badRole(options.role))
  if (role === 'customer' && !options.customer) throw new UsageError(adminWords.customerNeeded)
  if (role !== 'customer' && options.customer) throw new UsageError(adminWords.customerOnly)
  const password = readFileSync(0, 'utf8').replace(/\r?\n$/, '')
  if (password.length < passwordLength.min || password.length > passwordLength.max) {
    throw new Refused(adminWords.shortPassword(passwordLength.min))
  }
  const passwordHash = await hashPassword(password)
  return withStore({ isNew: true }, (store) => {
    const customerId = customerIdOf(store, options.customer)
    const { display, department = '' } = options
    const fresh = { name, displayName: display ?? name, role, department, customerId, passwordHash }
    addUser(store, fresh, operator())
    return adminWords.userAdded(name, role satisfies Role)
  })
}

function customerIdOf(store: Store, name: string | undefined): number | null {
  if (!name) return null
  const customer = findCustomerByName(store, name)
  if (customer === undefined) throw new Refused(adminWords.noCustomer(name))
  return customer.id
}
