import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { SetEdges } from '../../domain/whole-face.ts'

export const facePhoto = sqliteTable('face_photo', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  componentId: integer('component_id').notNull(),
  sha256: text('sha256').notNull(),
  widthPx: integer('width_px').notNull(),
  heightPx: integer('height_px').notNull(),
  foundEdges: text('found_edges', { mode: 'json' }).$type<SetEdges>(),
  note: text('note').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
