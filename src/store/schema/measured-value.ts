import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { MeasuredCharacteristic } from '../../domain/characteristic.ts'
import type { ReadingCondition } from '../../domain/flatness.ts'
import type { InstrumentUse } from '../../domain/instrument.ts'
import type { LengthUnit, MeasuredBudgetInput, ValueReading } from '../../domain/measured-value.ts'
import type { Uncertainty } from '../../domain/uncertainty.ts'

export const measuredValue = sqliteTable('measured_value', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  characteristic: text('characteristic').$type<MeasuredCharacteristic>().notNull(),
  componentId: integer('component_id'),
  condition: text('condition').$type<ReadingCondition>().notNull(),
  instrumentId: integer('instrument_id').notNull(),
  unit: text('unit').$type<LengthUnit>().notNull(),
  readings: text('readings', { mode: 'json' }).$type<readonly ValueReading[]>().notNull(),
  sizeMm: real('size_mm'),
  valueUm: real('value_um').notNull(),
  uncertainty: text('uncertainty', { mode: 'json' }).$type<Uncertainty>().notNull(),
  budgetInput: text('budget_input', { mode: 'json' }).$type<MeasuredBudgetInput>().notNull(),
  method: text('method').notNull(),
  instrument: text('instrument_use', { mode: 'json' }).$type<InstrumentUse>().notNull(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
  secondInstrument: text('second_instrument_use', { mode: 'json' }).$type<InstrumentUse>(),
})
