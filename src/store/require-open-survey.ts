import { AppError } from '../domain/app-error.ts'
import type { SurveyRecord } from '../domain/dial-survey.ts'
import type { Store } from './open.ts'
import { requireDialSurvey } from './require-dial-survey.ts'

/** @throws AppError not-found `no-survey`; conflict `survey-ended` */
export function requireOpenSurvey(store: Store, workOrderId: number, id: number): SurveyRecord {
  const survey = requireDialSurvey(store, workOrderId, id)
  if (survey.end !== null) throw new AppError('conflict', 'survey-ended')
  return survey
}
