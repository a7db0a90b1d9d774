import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ClipState, SetScrews } from '../../domain/assembly.ts'
import type { TypedN } from '../../domain/spring-check.ts'
import type { TypedMm } from '../../domain/wear-track.ts'

export const assembly = sqliteTable('assembly', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  workingLength: text('working_length', { mode: 'json' }).$type<TypedMm>().notNull(),
  designWorkingLengthMm: real('design_working_length_mm'),
  workingLengthToleranceMm: real('working_length_tolerance_mm'),
  designLoadN: real('design_load_n'),
  loadTolerancePercent: real('load_tolerance_percent'),
  measuredLoad: text('measured_load', { mode: 'json' }).$type<TypedN>(),
  designSource: text('design_source').notNull(),
  setScrews: text('set_screws', { mode: 'json' }).$type<readonly SetScrews[]>().notNull(),
  torqueTolerancePercent: real('torque_tolerance_percent'),
  clips: text('clips').$type<ClipState>().notNull(),
  clipsCount: integer('clips_count'),
  lubricant: text('lubricant').notNull(),
  isTurningFree: integer('is_turning_free', { mode: 'boolean' }).notNull(),
  loadN: real('load_n'),
  loadFrom: text('load_from').$type<'measured' | 'spring-check'>(),
  springCheckId: integer('spring_check_id'),
  method: text('method').notNull(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
