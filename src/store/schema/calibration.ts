import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ToleranceState } from '../../domain/instrument.ts'

export const calibration = sqliteTable('calibration', {
  id: integer('id').primaryKey(),
  instrumentId: integer('instrument_id').notNull(),
  calibratedOn: text('calibrated_on').notNull(),
  dueOn: text('due_on').notNull(),
  certificateNumber: text('certificate_number').notNull(),
  laboratory: text('laboratory').notNull(),
  asFound: text('as_found').$type<ToleranceState>().notNull(),
  asFoundError: real('as_found_error'),
  asLeft: text('as_left').$type<ToleranceState>().notNull(),
  asLeftError: real('as_left_error'),
  expandedUncertainty: real('expanded_uncertainty'),
  coverageFactor: real('coverage_factor'),
  note: text('note').notNull(),
})
