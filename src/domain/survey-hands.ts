import type { SurveyRecord } from './dial-survey.ts'

/** Everybody who had a hand in a survey: who began it and who read it, whatever came of it. */
export function surveyHands({
  startedById,
  readings,
}: SurveyRecord): readonly { readonly recordedById: number }[] {
  return [{ recordedById: startedById }, ...readings]
}
