import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { InstrumentUnit } from '../../domain/instrument.ts'

export const instrumentAmendment = sqliteTable('instrument_amendment', {
  id: integer('id').primaryKey(),
  instrumentId: integer('instrument_id').notNull(),
  flatToleranceUm: real('flat_tolerance_um'),
  range: text('range').notNull(),
  resolution: text('resolution').notNull(),
  unit: text('unit').$type<InstrumentUnit | ''>().notNull(),
  rangeFrom: real('range_from'),
  rangeTo: real('range_to'),
  resolutionStep: real('resolution_step'),
  largestError: real('largest_error'),
  reason: text('reason').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
