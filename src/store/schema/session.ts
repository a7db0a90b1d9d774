import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const session = sqliteTable('session', {
  tokenHash: text('token_hash').primaryKey(),
  userId: integer('user_id').notNull(),
  createdAt: text('created_at').notNull(),
  expiresAt: text('expires_at').notNull(),
})
