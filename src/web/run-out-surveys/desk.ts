import type { SurveyRecord } from '../../domain/dial-survey.ts'
import { listDialSurveys } from '../../store/list-dial-surveys.ts'
import type { AppContext } from '../context.ts'
import { type MeasuredDesk, openMeasuredDesk } from '../measured-values/desk.ts'

/** All that a survey needs to know of its order. */
export type SurveyDesk = MeasuredDesk & { readonly surveys: readonly SurveyRecord[] }

/** @throws AppError not-found where the order is not there */
export function openSurveyDesk(c: AppContext): SurveyDesk {
  const desk = openMeasuredDesk(c)
  return { ...desk, surveys: listDialSurveys(c.var.shop.store, desk.workOrder.id) }
}
