import { integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { SurveySpot } from '../../domain/dial-survey.ts'

export const dialSurveyReading = sqliteTable('dial_survey_reading', {
  id: integer('id').primaryKey(),
  dialSurveyId: integer('dial_survey_id').notNull(),
  planeIndex: integer('plane_index').notNull(),
  turnIndex: integer('turn_index').notNull(),
  positionIndex: integer('position_index').notNull(),
  indicator: text('indicator').$type<SurveySpot['indicator']>().notNull(),
  um: real('um').notNull(),
  typed: text('typed').notNull(),
  recordedById: integer('recorded_by_id').notNull(),
  recordedByName: text('recorded_by_name').notNull(),
  recordedAt: text('recorded_at').notNull(),
})
