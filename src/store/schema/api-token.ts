import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const apiToken = sqliteTable('api_token', {
  id: integer('id').primaryKey(),
  userId: integer('user_id').notNull(),
  label: text('label').notNull(),
  tokenHash: text('token_hash').notNull(),
  createdAt: text('created_at').notNull(),
  revokedAt: text('revoked_at'),
})
