import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { UseFault } from '../../domain/use-exception.ts'

export const useException = sqliteTable('use_exception', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  instrumentId: integer('instrument_id').notNull(),
  fault: text('fault').$type<UseFault>().notNull(),
  reason: text('reason').notNull(),
  askedById: integer('asked_by_id').notNull(),
  askedByName: text('asked_by_name').notNull(),
  askedAt: text('asked_at').notNull(),
})
