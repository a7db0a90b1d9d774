import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { WholeFace, WholeFaceKind } from '../../domain/whole-face.ts'

export const wholeFace = sqliteTable('whole_face', {
  flatnessReadingId: integer('flatness_reading_id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  kind: text('kind').$type<WholeFaceKind>().notNull(),
  photoId: integer('photo_id'),
  details: text('details', { mode: 'json' }).$type<WholeFace>().notNull(),
})
