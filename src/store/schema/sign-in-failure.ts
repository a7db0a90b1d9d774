import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const signInFailure = sqliteTable('sign_in_failure', {
  id: integer('id').primaryKey(),
  name: text('name').notNull(),
  address: text('address').notNull(),
  at: text('at').notNull(),
})
