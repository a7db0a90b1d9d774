import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const instrumentFile = sqliteTable('instrument_file', {
  id: integer('id').primaryKey(),
  instrumentId: integer('instrument_id').notNull(),
  calibrationId: integer('calibration_id'),
  kind: text('kind').$type<'photo' | 'file'>().notNull(),
  name: text('name').notNull(),
  sha256: text('sha256').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
