import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Decision } from '../../domain/release.ts'

export const decision = sqliteTable('decision', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  handOverId: integer('hand_over_id').notNull(),
  outcome: text('outcome').$type<Decision['outcome']>().notNull(),
  reason: text('reason').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  byDepartment: text('by_department').notNull(),
  at: text('at').notNull(),
})
