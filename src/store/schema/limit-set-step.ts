import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { LimitSetStep } from '../../domain/limit-set.ts'

export const limitSetStep = sqliteTable('limit_set_step', {
  id: integer('id').primaryKey(),
  limitSetId: integer('limit_set_id').notNull(),
  step: text('step').$type<LimitSetStep['step']>().notNull(),
  effectiveOn: text('effective_on').notNull(),
  reason: text('reason').notNull(),
  byId: integer('by_id'),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
