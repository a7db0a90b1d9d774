import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { RunStep } from '../../domain/dynamic-run.ts'

export const dynamicRun = sqliteTable('dynamic_run', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  startedAt: text('started_at').notNull(),
  liquid: text('liquid').notNull(),
  densityKgPerM3: real('density_kg_per_m3'),
  steps: text('steps', { mode: 'json' }).$type<readonly RunStep[]>().notNull(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
