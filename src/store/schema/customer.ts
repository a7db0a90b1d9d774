import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const customer = sqliteTable('customer', {
  id: integer('id').primaryKey(),
  name: text('name').notNull(),
  address: text('address').notNull(),
  contact: text('contact').notNull(),
  isInvented: integer('is_invented', { mode: 'boolean' }).notNull(),
})
