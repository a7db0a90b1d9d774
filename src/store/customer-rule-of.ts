import { desc, eq, sql } from 'drizzle-orm'
import type { AgreedRule } from '../domain/agreed-rule.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { agreedRule } from './schema/agreed-rule.ts'

const ruleOfCustomer = prepared((store) =>
  store.db
    .select()
    .from(agreedRule)
    .where(eq(agreedRule.customerId, sql.placeholder('id')))
    .orderBy(desc(agreedRule.id))
    .limit(1)
    .prepare(),
)

/** The newest rule agreed with a customer, which their next orders take; undefined: none. */
export function customerRuleOf(
  store: Store,
  customerId: number,
): (AgreedRule & { readonly id: number }) | undefined {
  const found = ruleOfCustomer(store).get({ id: customerId })
  if (found === undefined) return undefined
  const { id, rule, probability, reference, byName, at } = found
  return { id, rule, probability, reference, scope: 'customer', byName, at }
}
