import type { Actor } from '../../src/domain/actor.ts'
import type { User } from '../../src/domain/user.ts'
import { addCustomer } from '../../src/store/add-customer.ts'
import { addUser } from '../../src/store/add-user.ts'
import { listUsers } from '../../src/store/list-users.ts'
import type { Store } from '../../src/store/open.ts'

/** The instant at which everything built by the tests' support happens. */
export const castAt = '2026-11-25T09:00:00.000Z'

/** Who acts where no user does. */
export const operator: Actor = { userId: null, name: 'operator', at: castAt }

const cast = {
  tess: { displayName: 'Tess Turner', role: 'technician', department: 'Seal bench' },
  tom: { displayName: 'Tom Tiller', role: 'technician', department: 'Seal bench' },
  ian: { displayName: 'Ian Ives', role: 'inspector', department: 'Inspection' },
  ina: { displayName: 'Ina Irwin', role: 'inspector', department: 'Inspection' },
  cora: { displayName: 'Cora Crane', role: 'customer', department: 'Maintenance' },
  olga: { displayName: 'Olga Oake', role: 'customer', department: 'Maintenance' },
  mo: { displayName: 'Mo Marsh', role: 'manager', department: 'Office' },
} as const

export type CastName = keyof typeof cast
export type Cast = Readonly<Record<CastName, User>>

/** Cora's company and Olga's: neither may learn that the other exists. */
export const castCustomers = { cora: 'Invented Sugar Works', olga: 'Invented Dairy' } as const

/** What each of the cast types at sign-in: `tess at the quay`, and so on. */
export const castPassword = (name: CastName): string => `${name} at the quay`

/** Stands for a hash in tests (`verifyPassword` of the test app knows it): Argon2id takes 60 ms. */
const passwordHashOf = (name: CastName): string => `plain ${castPassword(name)}`

/** Adds the two customers and the seven people; their ids are 1 to 7 in the order above. */
export function addCast(store: Store): void {
  const ids = new Map<string, number>()
  for (const [name, company] of Object.entries(castCustomers)) {
    const fresh = { name: company, address: '1 Quay Road', contact: name, isInvented: false }
    ids.set(name, addCustomer(store, fresh, operator).id)
  }
  for (const name of Object.keys(cast) as CastName[]) {
    const customerId = ids.get(name) ?? null
    const passwordHash = passwordHashOf(name)
    addUser(store, { name, ...cast[name], customerId, passwordHash }, operator)
  }
}

/** The cast as they stand in a store that `openTestStore` opened. */
export function castOf(store: Store): Cast {
  return Object.fromEntries(listUsers(store).map((user) => [user.name, user])) as Cast
}

/** One of the cast, acting. */
export function actorOf(user: User, at: string = castAt): Actor {
  return { userId: user.id, name: user.displayName, at }
}
