import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const workOrder = sqliteTable('work_order', {
  id: integer('id').primaryKey(),
  number: text('number').notNull(),
  customerId: integer('customer_id').notNull(),
  sealId: integer('seal_id').notNull(),
  limitSetId: integer('limit_set_id').notNull(),
  customerOrder: text('customer_order').notNull(),
  reasonForRemoval: text('reason_for_removal').notNull(),
  decontamination: text('decontamination').notNull(),
  lastFluid: text('last_fluid').notNull(),
  sealedPressureKPa: real('sealed_pressure_kpa'),
  serviceTemperatureC: real('service_temperature_c'),
  shaftSpeedPerMin: real('shaft_speed_per_min'),
  receivedAt: text('received_at').notNull(),
  dueOn: text('due_on'),
  stage: text('stage').notNull(),
  isInvented: integer('is_invented', { mode: 'boolean' }).notNull(),
})
