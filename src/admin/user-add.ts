import { adminWords } from '../../views/words/en/admin.ts'
import { personTextLength } from '../domain/parse-person.ts'
import { type Role, roles } from '../domain/role.ts'
import { addUser } from '../store/add-user.ts'
import { findCustomerByName } from '../store/find-customer-by-name.ts'
import type { Store } from '../store/open.ts'
import { operator, withStore } from './operator.ts'
import type { Options } from './options.ts'
import { readPasswordHash } from './read-password-hash.ts'
import { Refused } from './refused.ts'
import { UsageError } from './usage-error.ts'

/** Adds a person; the password comes by standard input, where no process list shows it. */
export async function userAdd(options: Options): Promise<string> {
  const name = textOf('--name', options.name, personTextLength.name)
  if (name === '') throw new UsageError(adminWords.missing('--name'))
  const displayName = textOf('--display', options.display, personTextLength.displayName) || name
  const department = textOf('--department', options.department, personTextLength.department)
  const role = roleOf(options)
  const passwordHash = await readPasswordHash()
  // The first person makes the database; a customer's user needs one that knows the customer.
  return withStore({ isNew: role !== 'customer' }, (store) => {
    const customerId = customerIdOf(store, options.customer)
    addUser(store, { name, displayName, role, department, customerId, passwordHash }, operator())
    return adminWords.userAdded(name, role)
  })
}

function roleOf(options: Options): Role {
  if (options.role === undefined) throw new UsageError(adminWords.missing('--role'))
  const role = roles.find((one) => one === options.role)
  if (role === undefined) throw new UsageError(adminWords.badRole(options.role))
  if (role === 'customer' && !options.customer) throw new UsageError(adminWords.customerNeeded)
  if (role !== 'customer' && options.customer !== undefined) {
    throw new UsageError(adminWords.customerOnly)
  }
  return role
}

function textOf(option: string, typed: string | undefined, max: number): string {
  const text = typed?.trim() ?? ''
  if (text.length > max) throw new UsageError(adminWords.tooLong(option, max))
  return text
}

function customerIdOf(store: Store, name: string | undefined): number | null {
  if (!name) return null
  const customer = findCustomerByName(store, name)
  if (customer === undefined) throw new Refused(adminWords.noCustomer(name))
  return customer.id
}
