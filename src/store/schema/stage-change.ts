import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const stageChange = sqliteTable('stage_change', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  fromStage: text('from_stage'),
  toStage: text('to_stage').notNull(),
  reason: text('reason').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
