import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Characteristic, LimitBasis } from '../../domain/limit-set.ts'

export const limitValue = sqliteTable('limit_value', {
  id: integer('id').primaryKey(),
  limitSetId: integer('limit_set_id').notNull(),
  characteristic: text('characteristic').$type<Characteristic>().notNull(),
  faceMaterial: text('face_material'),
  upper: real('upper').notNull(),
  asWritten: text('as_written').notNull(),
  withinS: real('within_s'),
  volumeAtMostL: real('volume_at_most_l'),
  startAtLeastKPaGauge: real('start_at_least_kpa_gauge'),
  basis: text('basis').$type<LimitBasis>().notNull(),
  source: text('source').notNull(),
})
