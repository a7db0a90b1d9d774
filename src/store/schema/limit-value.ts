import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Characteristic } from '../../domain/characteristic.ts'
import type { LimitBasis, PerMmOf } from '../../domain/limit-set.ts'
import type { ComponentKind } from '../../domain/seal.ts'
import type { Service } from '../../domain/service.ts'

export const limitValue = sqliteTable('limit_value', {
  id: integer('id').primaryKey(),
  limitSetId: integer('limit_set_id').notNull(),
  characteristic: text('characteristic').$type<Characteristic>().notNull(),
  faceMaterial: text('face_material'),
  componentKind: text('component_kind').$type<ComponentKind>(),
  service: text('service').$type<Service>(),
  diameterOverMm: real('diameter_over_mm'),
  diameterUpToMm: real('diameter_up_to_mm'),
  pressureOverKPa: real('pressure_over_kpa'),
  pressureUpToKPa: real('pressure_up_to_kpa'),
  lower: real('lower'),
  upper: real('upper'),
  perMmOf: text('per_mm_of').$type<PerMmOf>(),
  typedLower: text('typed_lower').notNull(),
  typedUpper: text('typed_upper').notNull(),
  typedUnit: text('typed_unit').notNull(),
  asWritten: text('as_written').notNull(),
  withinS: real('within_s'),
  volumeAtMostL: real('volume_at_most_l'),
  startAtLeastKPaGauge: real('start_at_least_kpa_gauge'),
  basis: text('basis').$type<LimitBasis>().notNull(),
  source: text('source').notNull(),
  edition: text('edition').notNull(),
  clause: text('clause').notNull(),
  speedOverPerMin: real('speed_over_per_min'),
  speedUpToPerMin: real('speed_up_to_per_min'),
})
