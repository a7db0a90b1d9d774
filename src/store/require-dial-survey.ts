import { AppError } from '../domain/app-error.ts'
import type { SurveyRecord } from '../domain/dial-survey.ts'
import { listDialSurveys } from './list-dial-surveys.ts'
import type { Store } from './open.ts'

/** @throws AppError not-found `no-survey` where the order has none of this id */
export function requireDialSurvey(store: Store, workOrderId: number, id: number): SurveyRecord {
  const found = listDialSurveys(store, workOrderId).find((one) => one.id === id)
  if (found === undefined) throw new AppError('not-found', 'no-survey')
  return found
}
