import { asc, eq, sql } from 'drizzle-orm'
import type { SurveyRecord } from '../domain/dial-survey.ts'
import type { Store } from './open.ts'
import { prepared } from './prepared.ts'
import { dialSurvey } from './schema/dial-survey.ts'
import { dialSurveyEnd } from './schema/dial-survey-end.ts'
import { dialSurveyReading } from './schema/dial-survey-reading.ts'

const surveysOfOrder = prepared((store) =>
  store.db
    .select({ survey: dialSurvey, end: dialSurveyEnd })
    .from(dialSurvey)
    .leftJoin(dialSurveyEnd, eq(dialSurveyEnd.dialSurveyId, dialSurvey.id))
    .where(eq(dialSurvey.workOrderId, sql.placeholder('id')))
    .orderBy(asc(dialSurvey.id))
    .prepare(),
)

const readingsOfOrder = prepared((store) =>
  store.db
    .select({ reading: dialSurveyReading })
    .from(dialSurveyReading)
    .innerJoin(dialSurvey, eq(dialSurvey.id, dialSurveyReading.dialSurveyId))
    .where(eq(dialSurvey.workOrderId, sql.placeholder('id')))
    .orderBy(asc(dialSurveyReading.id))
    .prepare(),
)

/** All of an order with everything read, open ones and those given up too, oldest first. */
export function listDialSurveys(store: Store, workOrderId: number): SurveyRecord[] {
  const readings = readingsOfOrder(store).all({ id: workOrderId })
  return surveysOfOrder(store)
    .all({ id: workOrderId })
    .map(({ survey, end }) => ({
      ...survey,
      readings: readings.flatMap(({ reading: { dialSurveyId, ...one } }) =>
        dialSurveyId === survey.id ? [one] : [],
      ),
      end: end === null ? null : withoutKeys(end),
    }))
}

function withoutKeys({
  dialSurveyId: _1,
  workOrderId: _2,
  ...end
}: typeof dialSurveyEnd.$inferSelect): NonNullable<SurveyRecord['end']> {
  return { ...end, result: end.result ?? null }
}
