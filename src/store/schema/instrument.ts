import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { InstrumentKind, InstrumentUnit } from '../../domain/instrument.ts'

export const instrument = sqliteTable('instrument', {
  id: integer('id').primaryKey(),
  kind: text('kind').$type<InstrumentKind>().notNull(),
  number: text('number').notNull(),
  name: text('name').notNull(),
  serial: text('serial').notNull(),
  lampId: text('lamp_id'),
  flatToleranceUm: real('flat_tolerance_um'),
  range: text('range').notNull(),
  resolution: text('resolution').notNull(),
  withdrawnOn: text('withdrawn_on'),
  unit: text('unit').$type<InstrumentUnit | ''>().notNull(),
  rangeFrom: real('range_from'),
  rangeTo: real('range_to'),
  resolutionStep: real('resolution_step'),
  largestError: real('largest_error'),
})
