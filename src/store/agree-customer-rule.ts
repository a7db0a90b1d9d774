import type { Actor } from '../domain/actor.ts'
import type { StatedRule } from '../domain/agreed-rule.ts'
import { addAgreedRule } from './add-agreed-rule.ts'
import type { Store } from './open.ts'
import { requireCustomer } from './require-customer.ts'

/**
 * Agrees on a rule with a customer: their next orders take it; those received before keep theirs.
 * @throws AppError not-found `no-customer`
 */
export function agreeCustomerRule(
  store: Store,
  fresh: { readonly customerId: number; readonly stated: StatedRule },
  actor: Actor,
): void {
  const { customerId, stated } = fresh
  store.transact(() => {
    requireCustomer(store, customerId)
    addAgreedRule(store, { of: { customerId }, stated, subject: `customer ${customerId}` }, actor)
  })
}
