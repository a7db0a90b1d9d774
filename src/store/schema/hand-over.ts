import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const handOver = sqliteTable('hand_over', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  note: text('note').notNull(),
  at: text('at').notNull(),
})
