import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { SurveyEnd } from '../../domain/dial-survey.ts'

export const dialSurveyEnd = sqliteTable('dial_survey_end', {
  dialSurveyId: integer('dial_survey_id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  outcome: text('outcome').$type<SurveyEnd['outcome']>().notNull(),
  measuredValueId: integer('measured_value_id'),
  result: text('result', { mode: 'json' }).$type<SurveyEnd['result']>(),
  reason: text('reason').notNull(),
  byId: integer('by_id').notNull(),
  byName: text('by_name').notNull(),
  at: text('at').notNull(),
})
