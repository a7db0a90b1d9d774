import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { InstrumentUse } from '../../domain/instrument.ts'
import type { TypedMm } from '../../domain/wear-track.ts'

export const wearTrack = sqliteTable('wear_track', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  componentId: integer('component_id').notNull(),
  noseWidth: text('nose_width', { mode: 'json' }).$type<TypedMm>().notNull(),
  trackWidths: text('track_widths', { mode: 'json' }).$type<readonly TypedMm[]>().notNull(),
  offset: text('offset', { mode: 'json' }).$type<TypedMm>(),
  offsetHour: integer('offset_hour'),
  movementUm: real('movement_um').notNull(),
  standardUncertaintyUm: real('standard_uncertainty_um'),
  method: text('method').notNull(),
  instrumentId: integer('instrument_id'),
  instrument: text('instrument_use', { mode: 'json' }).$type<InstrumentUse>(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
