import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { InstrumentUse } from '../../domain/instrument.ts'
import type {
  LeakPlace,
  StaticTestBudgetInput,
  StaticTestTyped,
  TestSection,
} from '../../domain/static-test.ts'
import type { Uncertainty } from '../../domain/uncertainty.ts'
import type { VolumeExpansion } from '../../domain/volume-expansion.ts'

export const staticTest = sqliteTable('static_test', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  section: text('section').$type<TestSection>().notNull(),
  typed: text('typed', { mode: 'json' }).$type<StaticTestTyped>().notNull(),
  startPressureKPaAbs: real('start_pressure_kpa_abs').notNull(),
  endPressureKPaAbs: real('end_pressure_kpa_abs').notNull(),
  barometerKPa: real('barometer_kpa').notNull(),
  startTemperatureC: real('start_temperature_c').notNull(),
  endTemperatureC: real('end_temperature_c').notNull(),
  durationS: real('duration_s').notNull(),
  startedAt: text('started_at').notNull(),
  volumeL: real('volume_l').notNull(),
  stabilisationS: real('stabilisation_s'),
  gaugeInstrumentId: integer('gauge_instrument_id').notNull(),
  thermometerInstrumentId: integer('thermometer_instrument_id'),
  pressureDropKPa: real('pressure_drop_kpa').notNull(),
  leakPaM3PerS: real('leak_pa_m3_per_s').notNull(),
  uncompensatedPaM3PerS: real('uncompensated_pa_m3_per_s').notNull(),
  referenceTemperatureC: real('reference_temperature_c').notNull(),
  method: text('method').notNull(),
  gauge: text('gauge_use', { mode: 'json' }).$type<InstrumentUse>().notNull(),
  thermometer: text('thermometer_use', { mode: 'json' }).$type<InstrumentUse>(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
  leakUncertainty: text('leak_uncertainty', { mode: 'json' }).$type<Uncertainty>(),
  dropUncertainty: text('drop_uncertainty', { mode: 'json' }).$type<Uncertainty>(),
  budgetInput: text('budget_input', { mode: 'json' }).$type<StaticTestBudgetInput>(),
  volumeInstrumentId: integer('volume_instrument_id'),
  volume: text('volume_use', { mode: 'json' }).$type<InstrumentUse>(),
  leakPlace: text('leak_place').$type<LeakPlace>(),
  expansion: text('expansion', { mode: 'json' }).$type<VolumeExpansion>(),
})
