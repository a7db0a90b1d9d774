import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { DoubtAnswer } from '../../domain/doubt.ts'
import type { UsedKind } from '../../domain/result-subject.ts'

export const doubtAnswer = sqliteTable('doubt_answer', {
  id: integer('id').primaryKey(),
  calibrationId: integer('calibration_id').notNull(),
  subjectKind: text('subject_kind').$type<UsedKind>().notNull(),
  subjectId: integer('subject_id').notNull(),
  answer: text('answer').$type<DoubtAnswer>().notNull(),
  reason: text('reason').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
