import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const useExceptionAnswer = sqliteTable('use_exception_answer', {
  id: integer('id').primaryKey(),
  useExceptionId: integer('use_exception_id').notNull(),
  answer: text('answer').$type<'allowed' | 'declined'>().notNull(),
  validUntil: text('valid_until'),
  reason: text('reason').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
