import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const audit = sqliteTable('audit', {
  id: integer('id').primaryKey(),
  at: text('at').notNull(),
  userId: integer('user_id'),
  actor: text('actor').notNull(),
  act: text('act').notNull(),
  subject: text('subject').notNull(),
  detail: text('detail').notNull(),
  previousHash: text('previous_hash').notNull(),
  hash: text('hash').notNull(),
})
