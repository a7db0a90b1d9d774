import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ReadingCondition } from '../../domain/flatness.ts'
import type { InstrumentUse } from '../../domain/instrument.ts'
import type { SpringCheck } from '../../domain/spring-check.ts'
import type { TypedMm } from '../../domain/wear-track.ts'

export const springCheck = sqliteTable('spring_check', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  condition: text('condition').$type<ReadingCondition>().notNull(),
  springsCount: integer('springs_count').notNull(),
  freeLength: text('free_length', { mode: 'json' }).$type<TypedMm>().notNull(),
  newLength: text('new_length', { mode: 'json' }).$type<TypedMm>(),
  loads: text('loads', { mode: 'json' }).$type<SpringCheck['loads']>().notNull(),
  statedRateNPerMm: real('stated_rate_n_per_mm'),
  workingLength: text('working_length', { mode: 'json' }).$type<TypedMm>().notNull(),
  solidLength: text('solid_length', { mode: 'json' }).$type<TypedMm>(),
  rateNPerMm: real('rate_n_per_mm'),
  workingLoadN: real('working_load_n'),
  facePressureMPa: real('face_pressure_mpa'),
  remainingTravelMm: real('remaining_travel_mm'),
  loadPerMmN: real('load_per_mm_n'),
  setMm: real('set_mm'),
  expandedUncertaintyN: real('expanded_uncertainty_n'),
  coverageFactor: real('coverage_factor'),
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
