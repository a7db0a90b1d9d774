import type { SurveyShown } from '../../../views/results/survey-section.tsx'
import type { Evidence } from '../../domain/evidence.ts'
import type { ShownResult } from '../../domain/shown-result.ts'

/** The survey that a figure came from; null for any other figure. */
export function surveyOfResult(evidence: Evidence, result: ShownResult): SurveyShown | null {
  if (result.kind !== 'measured-value') return null
  const survey = evidence.dialSurveys.find((one) => one.end?.measuredValueId === result.id)
  return survey === undefined ? null : { survey, limitUm: result.judged.upper }
}
