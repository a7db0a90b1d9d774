import { desc, eq, sql } from 'drizzle-orm'
import { alias } from 'drizzle-orm/sqlite-core'
import { type AgreedRule, houseRule } from '../domain/agreed-rule.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { agreedRule } from './schema/agreed-rule.ts'

const original = alias(agreedRule, 'original')

const ruleOfOrder = prepared((store) =>
  store.db
    .select({ own: agreedRule, original })
    .from(agreedRule)
    .leftJoin(original, eq(original.id, agreedRule.copiedFromId))
    .where(eq(agreedRule.workOrderId, sql.placeholder('id')))
    .orderBy(desc(agreedRule.id))
    .limit(1)
    .prepare(),
)

/**
 * The rule that an order's results are compared by: the newest agreed for it; the house's own
 * where there is none. What was agreed with the customer is copied to the order at its receipt, and
 * bears the name and day of the agreement itself.
 */
export function agreedRuleOf(store: Store, workOrderId: number): AgreedRule {
  const found = ruleOfOrder(store).get({ id: workOrderId })
  if (found === undefined) return houseRule
  const { rule, probability, reference } = found.own
  const { byName, at } = found.original ?? found.own
  const scope = found.original === null ? 'order' : 'customer'
  return { rule, probability, reference, scope, byName, at }
}
