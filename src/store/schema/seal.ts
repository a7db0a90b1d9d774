import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Arrangement } from '../../domain/seal.ts'

export const seal = sqliteTable('seal', {
  id: integer('id').primaryKey(),
  customerId: integer('customer_id').notNull(),
  equipmentId: integer('equipment_id'),
  serial: text('serial').notNull(),
  drawing: text('drawing').notNull(),
  drawingRevision: text('drawing_revision').notNull(),
  arrangement: text('arrangement').$type<Arrangement>().notNull(),
  shaftDiameterMm: real('shaft_diameter_mm').notNull(),
  size: text('size').notNull(),
})
