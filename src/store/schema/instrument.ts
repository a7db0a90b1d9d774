import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { InstrumentKind } from '../../domain/instrument.ts'

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
})
