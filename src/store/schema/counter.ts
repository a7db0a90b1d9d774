import { integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const counter = sqliteTable(
  'counter',
  {
    name: text('name').notNull(),
    year: integer('year').notNull(),
    last: integer('last').notNull(),
  },
  (t) => [primaryKey({ columns: [t.name, t.year] })],
)
