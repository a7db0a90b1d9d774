import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Stage } from '../../domain/stage.ts'

export const stageChange = sqliteTable('stage_change', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  from: text('from_stage').$type<Stage>(),
  to: text('to_stage').$type<Stage>().notNull(),
  reason: text('reason').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
