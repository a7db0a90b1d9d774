import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const limitValue = sqliteTable('limit_value', {
  id: integer('id').primaryKey(),
  limitSetId: integer('limit_set_id').notNull(),
  characteristic: text('characteristic').notNull(),
  faceMaterial: text('face_material'),
  upper: real('upper').notNull(),
  asWritten: text('as_written').notNull(),
  withinS: real('within_s'),
  volumeAtMostL: real('volume_at_most_l'),
  basis: text('basis').notNull(),
  source: text('source').notNull(),
})
