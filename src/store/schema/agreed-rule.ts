import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { DecisionRule } from '../../science/acceptance/decision-rule.ts'

export const agreedRule = sqliteTable('agreed_rule', {
  id: integer('id').primaryKey(),
  customerId: integer('customer_id'),
  workOrderId: integer('work_order_id'),
  rule: text('rule').$type<DecisionRule>().notNull(),
  probability: real('probability').notNull(),
  reference: text('reference').notNull(),
  /** An order's rule that was taken from its customer's at receipt: which one that was. */
  copiedFromId: integer('copied_from_id'),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
