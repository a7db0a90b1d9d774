import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const limitSet = sqliteTable('limit_set', {
  id: integer('id').primaryKey(),
  name: text('name').notNull(),
  version: integer('version').notNull(),
  datedOn: text('dated_on').notNull(),
  note: text('note').notNull(),
  directionsRequiredCount: integer('directions_required_count').notNull(),
  uncertaintyShareAtMost: real('uncertainty_share_at_most').notNull(),
  writtenById: integer('written_by_id'),
  writtenByName: text('written_by_name').notNull(),
})
