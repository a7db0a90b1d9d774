import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { SurveyCharacteristic } from '../../domain/characteristic.ts'
import type { SurveySetUp } from '../../domain/dial-survey.ts'
import type { ReadingCondition } from '../../domain/flatness.ts'

export const dialSurvey = sqliteTable('dial_survey', {
  id: integer('id').primaryKey(),
  workOrderId: integer('work_order_id').notNull(),
  characteristic: text('characteristic').$type<SurveyCharacteristic>().notNull(),
  condition: text('condition').$type<ReadingCondition>().notNull(),
  instrumentId: integer('instrument_id').notNull(),
  setUp: text('set_up', { mode: 'json' }).$type<SurveySetUp>().notNull(),
  note: text('note').notNull(),
  replacesId: integer('replaces_id'),
  reason: text('reason').notNull(),
  startedById: integer('started_by_id').notNull(),
  startedByName: text('started_by_name').notNull(),
  startedAt: text('started_at').notNull(),
})
