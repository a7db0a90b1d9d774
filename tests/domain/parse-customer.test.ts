import { expect, test } from 'vitest'
import { parseCustomer } from '../../src/domain/parse-customer.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

test('reads a customer by name alone', () => {
  expect(accepted(parseCustomer({ name: ' Invented Dairy ' }))).toEqual({
    name: 'Invented Dairy',
    address: '',
    contact: '',
  })
})

test('refuses a customer without a name, with too long a one, and unknown fields', () => {
  expect(faultsOf(parseCustomer({ name: ' ' }))).toEqual(['name empty'])
  expect(faultsOf(parseCustomer({ name: 'x'.repeat(120) }))).toEqual([])
  expect(faultsOf(parseCustomer({ name: 'x'.repeat(121) }))).toEqual(['name too-long'])
  expect(faultsOf(parseCustomer({ name: 'x', isInvented: true }))).toEqual([
    'isInvented unknown-field',
  ])
})
