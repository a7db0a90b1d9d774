import { integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const keptAnswer = sqliteTable(
  'kept_answer',
  {
    userId: integer('user_id').notNull(),
    key: text('key').notNull(),
    requestHash: text('request_hash').notNull(),
    status: integer('status').notNull(),
    body: text('body').notNull(),
    at: text('at').notNull(),
  },
  (t) => [primaryKey({ columns: [t.userId, t.key] })],
)
