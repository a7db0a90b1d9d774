import { blob, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const storedFile = sqliteTable('stored_file', {
  sha256: text('sha256').primaryKey(),
  mediaType: text('media_type').notNull(),
  bytes: blob('bytes', { mode: 'buffer' }).notNull(),
  storedAt: text('stored_at').notNull(),
})
