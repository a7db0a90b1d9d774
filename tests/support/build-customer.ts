import type { Customer } from '../../src/domain/customer.ts'

export function buildCustomer(changes: Partial<Customer> = {}): Customer {
  return {
    id: 1,
    name: 'Invented Sugar Works',
    address: '',
    contact: '',
    isInvented: true,
    ...changes,
  }
}
