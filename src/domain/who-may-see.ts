import type { User } from './user.ts'

/** Says whether a user may see a customer's records: the staff all of them, a customer their own. */
export function maySeeCustomer(
  user: Pick<User, 'role' | 'customerId' | 'isActive'>,
  customerId: number,
): boolean {
  if (!user.isActive) return false
  return user.role === 'customer' ? user.customerId === customerId : true
}
