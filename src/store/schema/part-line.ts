import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { PartFate } from '../../domain/part-line.ts'
import type { StripPart } from '../../domain/strip-part.ts'

export const partLine = sqliteTable('part_line', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  part: text('part').$type<StripPart>().notNull(),
  description: text('description').notNull(),
  fate: text('fate').$type<PartFate>().notNull(),
  quantityCount: integer('quantity_count').notNull(),
  batch: text('batch').notNull(),
  certificate: text('certificate').notNull(),
  compound: text('compound').notNull(),
  curedOn: text('cured_on'),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
