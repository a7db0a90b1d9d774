import { expect, test } from 'vitest'
import { roles, staffRoles } from '../../src/domain/role.ts'
import { allStages } from '../../src/domain/stage.ts'
import { maySeeCustomer, maySeeResults } from '../../src/domain/who-may-see.ts'
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

test('a customer sees results only once they are the workshop’s word', () => {
  const cora = buildUser({ role: 'customer', customerId: 1 })
  const seen = allStages.filter((stage) => maySeeResults(cora, stage))
  expect(seen).toEqual(['released', 'dispatched'])
  for (const role of staffRoles) {
    expect(allStages.every((stage) => maySeeResults(buildUser({ role }), stage))).toBe(true)
  }
})
