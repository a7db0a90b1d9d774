import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const calibration = sqliteTable('calibration', {
  id: integer('id').primaryKey(),
  instrumentId: integer('instrument_id').notNull(),
  calibratedOn: text('calibrated_on').notNull(),
  dueOn: text('due_on').notNull(),
  certificateNumber: text('certificate_number').notNull(),
})
