import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { ComponentKind } from '../../domain/seal.ts'

export const component = sqliteTable('component', {
  id: integer('id').primaryKey(),
  sealId: integer('seal_id').notNull(),
  kind: text('kind').$type<ComponentKind>().notNull(),
  material: text('material').notNull(),
  outerDiameterMm: real('outer_diameter_mm'),
  innerDiameterMm: real('inner_diameter_mm'),
  noseHeightMm: real('nose_height_mm'),
  minimumNoseHeightMm: real('minimum_nose_height_mm'),
})
