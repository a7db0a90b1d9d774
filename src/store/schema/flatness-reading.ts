import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ReadingCondition, RecordedPattern } from '../../domain/flatness.ts'
import type { FlatnessBudgetInput } from '../../domain/flatness-budget-input.ts'
import type { InstrumentUse } from '../../domain/instrument.ts'
import type { Uncertainty } from '../../domain/uncertainty.ts'
import type { UnreadableCause } from '../../domain/unreadable-cause.ts'

export const flatnessReading = sqliteTable('flatness_reading', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  componentId: integer('component_id').notNull(),
  condition: text('condition').$type<ReadingCondition>().notNull(),
  lampInstrumentId: integer('lamp_instrument_id').notNull(),
  flatInstrumentId: integer('flat_instrument_id').notNull(),
  pattern: text('pattern').$type<RecordedPattern>().notNull(),
  ringCentre: text('ring_centre').$type<'high' | 'low'>(),
  viewingAngleDeg: real('viewing_angle_deg').notNull(),
  soakMin: real('soak_min'),
  temperatureC: real('temperature_c'),
  wavelengthNm: real('wavelength_nm').notNull(),
  bandHeightUm: real('band_height_um').notNull(),
  bands: real('bands'),
  flatnessUm: real('flatness_um'),
  form: text('form').notNull(),
  standardUncertaintyUm: real('standard_uncertainty_um'),
  method: text('method').notNull(),
  lamp: text('lamp_use', { mode: 'json' }).$type<InstrumentUse>().notNull(),
  flat: text('flat_use', { mode: 'json' }).$type<InstrumentUse>().notNull(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
  uncertainty: text('uncertainty', { mode: 'json' }).$type<Uncertainty>(),
  budgetInput: text('budget_input', { mode: 'json' }).$type<FlatnessBudgetInput>(),
  unreadableCause: text('unreadable_cause').$type<UnreadableCause>(),
})
