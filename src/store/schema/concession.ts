import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Characteristic } from '../../domain/characteristic.ts'
import type { ResultKind } from '../../domain/result-subject.ts'

export const concession = sqliteTable('concession', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  subjectKind: text('subject_kind').$type<ResultKind>().notNull(),
  subjectId: integer('subject_id').notNull(),
  characteristic: text('characteristic').$type<Characteristic>().notNull(),
  reason: text('reason').notNull(),
  customerReference: text('customer_reference').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
