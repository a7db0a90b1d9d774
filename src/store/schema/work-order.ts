import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Service } from '../../domain/service.ts'
import type { Stage } from '../../domain/stage.ts'
import type { DecontaminationState } from '../../domain/work-order.ts'

export const workOrder = sqliteTable('work_order', {
  id: integer('id').primaryKey(),
  number: text('number').notNull(),
  customerId: integer('customer_id').notNull(),
  sealId: integer('seal_id').notNull(),
  limitSetId: integer('limit_set_id').notNull(),
  customerOrder: text('customer_order').notNull(),
  reasonForRemoval: text('reason_for_removal').notNull(),
  decontamination: text('decontamination').$type<DecontaminationState>().notNull(),
  lastFluid: text('last_fluid').notNull(),
  sealedPressureKPa: real('sealed_pressure_kpa'),
  serviceTemperatureC: real('service_temperature_c'),
  shaftSpeedPerMin: real('shaft_speed_per_min'),
  receivedAt: text('received_at').notNull(),
  dueOn: text('due_on'),
  stage: text('stage').$type<Stage>().notNull(),
  isInvented: integer('is_invented', { mode: 'boolean' }).notNull(),
  service: text('service').$type<Service>().notNull(),
})
