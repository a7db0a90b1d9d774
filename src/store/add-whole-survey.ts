import type { Actor } from '../domain/actor.ts'
import { completeSurvey } from '../domain/complete-survey.ts'
import type { SurveyRecord } from '../domain/dial-survey.ts'
import type { MeasuredValue } from '../domain/measured-value.ts'
import type { MeasuredValueContext } from '../domain/parse-measured-value.ts'
import type { NewSurveyReading } from '../domain/parse-survey-readings.ts'
import type { SurveyResult } from '../domain/survey-result.ts'
import { addSurveyReading } from './add-survey-reading.ts'
import { recordDialSurvey } from './end-dial-survey.ts'
import type { Store } from './open.ts'
import { requireOpenSurvey } from './require-open-survey.ts'
import { type FreshSurvey, startDialSurvey } from './start-dial-survey.ts'

export type WholeSurvey = {
  readonly survey: SurveyRecord
  readonly measured: MeasuredValue
  readonly result: SurveyResult
}

/**
 * Records a survey with all of its readings at once, in one transaction.
 * @throws AppError as startDialSurvey, addSurveyReading and recordDialSurvey
 */
export function addWholeSurvey(
  store: Store,
  fresh: {
    readonly survey: FreshSurvey
    readonly readings: readonly NewSurveyReading[]
    /** As stated; null: taken from the instrument. */
    readonly readingStandardUncertaintyUm: number | null
  },
  context: MeasuredValueContext,
  actor: Actor,
): WholeSurvey {
  return store.transact(() => {
    const { id, workOrderId } = startDialSurvey(store, fresh.survey, actor)
    const of = { workOrderId, surveyId: id }
    for (const reading of fresh.readings) addSurveyReading(store, of, reading, actor)
    const survey = requireOpenSurvey(store, workOrderId, id)
    const complete = completeSurvey(survey, context, fresh.readingStandardUncertaintyUm ?? 0)
    const measured = recordDialSurvey(store, of, complete, actor)
    return { survey, measured, result: complete.result }
  })
}
