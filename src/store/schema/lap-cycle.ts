import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Abrasive, LapFigureName, LapPurpose, PlateForm } from '../../domain/lap-cycle.ts'

export const lapCycle = sqliteTable('lap_cycle', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  componentId: integer('component_id').notNull(),
  plate: text('plate').notNull(),
  plateForm: text('plate_form').$type<PlateForm>(),
  plateSagUm: real('plate_sag_um'),
  plateDiameterMm: real('plate_diameter_mm'),
  abrasive: text('abrasive').$type<Abrasive>(),
  grit: text('grit').notNull(),
  loadKg: real('load_kg'),
  durationMin: real('duration_min'),
  plannedStockUm: real('planned_stock_um'),
  stockUm: real('stock_um'),
  heightBeforeMm: real('height_before_mm'),
  heightAfterMm: real('height_after_mm'),
  isNewRing: integer('is_new_ring', { mode: 'boolean' }).notNull(),
  typed: text('typed', { mode: 'json' })
    .$type<Readonly<Partial<Record<LapFigureName, string>>>>()
    .notNull(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
  purpose: text('purpose').$type<LapPurpose>().notNull(),
})
