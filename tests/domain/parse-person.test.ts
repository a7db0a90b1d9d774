import { expect, test } from 'vitest'
import { parsePerson } from '../../src/domain/parse-person.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const context = { customerIds: [4, 7] }
const bench = { name: 'ned', displayName: 'Ned Nye', role: 'technician', password: ' eight c' }

test('reads a person of the workshop, the password with its spaces', () => {
  expect(accepted(parsePerson({ ...bench, department: 'Seal bench' }, context))).toEqual({
    person: {
      name: 'ned',
      displayName: 'Ned Nye',
      role: 'technician',
      department: 'Seal bench',
      customerId: null,
    },
    password: ' eight c',
  })
})

test('gives a customer of the list to a person of a customer, and to nobody else', () => {
  const customer = { ...bench, role: 'customer', customerId: '7' }
  expect(accepted(parsePerson(customer, context)).person.customerId).toBe(7)
  const faults = (input: object) => faultsOf(parsePerson({ ...customer, ...input }, context))
  expect(faults({ customerId: '' })).toEqual(['customerId empty'])
  expect(faults({ customerId: '5' })).toEqual(['customerId not-known'])
  expect(faults({ role: 'inspector' })).toEqual(['customerId not-here'])
})

test('needs a password of at least eight characters and at most two hundred', () => {
  const faults = (password: string) => faultsOf(parsePerson({ ...bench, password }, context))
  expect(faults('')).toEqual(['password empty'])
  expect(faults('seven c')).toEqual(['password too-short'])
  expect(faults('x'.repeat(200))).toEqual([])
  expect(faults('x'.repeat(201))).toEqual(['password too-long'])
})

test('needs a name to sign in with, one to show, and a role', () => {
  expect(faultsOf(parsePerson({ password: 'eight ch' }, context))).toEqual([
    'name empty',
    'displayName empty',
    'role empty',
  ])
  expect(faultsOf(parsePerson({ ...bench, name: 'n'.repeat(61) }, context))).toEqual([
    'name too-long',
  ])
  expect(faultsOf(parsePerson({ ...bench, isActive: 'no' }, context))).toEqual([
    'isActive unknown-field',
  ])
})
