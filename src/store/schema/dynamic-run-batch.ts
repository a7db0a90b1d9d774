import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

export const dynamicRunBatch = sqliteTable('dynamic_run_batch', {
  id: integer('id').primaryKey(),
  dynamicRunId: integer('dynamic_run_id').notNull(),
  /** As they came: a list of readings. */
  samples: text('samples').notNull(),
  sampleCount: integer('sample_count').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
