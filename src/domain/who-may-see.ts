import type { Stage } from './stage.ts'
import type { User } from './user.ts'

/** From here on the results are the workshop's word, which a customer may build on. */
const spokenStages: readonly Stage[] = ['released', 'dispatched']

/** Says whether a user may see a customer's records: the staff all of them, a customer their own. */
export function maySeeCustomer(
  user: Pick<User, 'role' | 'customerId' | 'isActive'>,
  customerId: number,
): boolean {
  if (!user.isActive) return false
  return user.role === 'customer' ? user.customerId === customerId : true
}

/** Says whether a user may see the results of an order that they may see. */
export function maySeeResults(user: Pick<User, 'role'>, stage: Stage): boolean {
  return user.role !== 'customer' || spokenStages.includes(stage)
}
