import type { Fault } from '../../src/domain/fault.ts'
import { surveySetUpFields } from '../../src/domain/parse-survey-set-up.ts'
import { ownErrorOf } from '../own-error-of.ts'
import { words } from '../words/en.ts'

export const surveyValueNames = surveySetUpFields
export type SurveyValueName = (typeof surveyValueNames)[number]
export type SurveyFormValues = Readonly<Record<SurveyValueName, string>>

export type SurveyTyped = {
  readonly values: SurveyFormValues
  readonly faults: readonly Fault[]
}

/** Name, typed value and fault of a field, the same for every control. */
export function surveyProps({ values, faults }: SurveyTyped, name: SurveyValueName) {
  return { name, value: values[name], ...ownErrorOf(faults, name, words.surveys.faults) }
}
