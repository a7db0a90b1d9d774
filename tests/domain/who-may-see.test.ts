import { expect, test } from 'vitest'
import { roles, staffRoles } from '../../src/domain/role.ts'
import { maySeeCustomer } from '../../src/domain/who-may-see.ts'
import { buildUser } from '../support/build-user.ts'

test('the staff see every customer', () => {
  for (const role of staffRoles) expect(maySeeCustomer(buildUser({ role }), 1)).toBe(true)
  expect(staffRoles).toHaveLength(roles.length - 1)
})

test('a customer sees their own records and nobody else’s', () => {
  const cora = buildUser({ role: 'customer', customerId: 1 })
  expect(maySeeCustomer(cora, 1)).toBe(true)
  expect(maySeeCustomer(cora, 2)).toBe(false)
})

test('a customer without a customer, and a user put out of use, see nothing', () => {
  expect(maySeeCustomer(buildUser({ role: 'customer', customerId: null }), 1)).toBe(false)
  expect(maySeeCustomer(buildUser({ isActive: false }), 1)).toBe(false)
})
