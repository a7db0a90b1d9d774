import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const flatnessDirection = sqliteTable('flatness_direction', {
  id: integer('id').primaryKey(),
  flatnessReadingId: integer('flatness_reading_id').notNull(),
  directionDeg: real('direction_deg').notNull(),
  bands: real('bands').notNull(),
  bandsTyped: text('bands_typed').notNull(),
})
