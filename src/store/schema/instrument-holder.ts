import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const instrumentHolder = sqliteTable('instrument_holder', {
  id: integer('id').primaryKey(),
  instrumentId: integer('instrument_id').notNull(),
  holder: text('holder').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
