import type { SurveyReading, SurveyRecord, SurveySpot } from './dial-survey.ts'
import { spotKey, surveySpots } from './survey-spots.ts'

/** How far a survey has come. */
export type SurveyProgress = {
  readonly spots: readonly SurveySpot[]
  /** The newest reading of each spot, by its key. */
  readonly current: ReadonlyMap<string, SurveyReading>
  /** Null once every spot has a reading. */
  readonly next: SurveySpot | null
  readonly doneCount: number
}

/** The spots of a survey, what was read of them, and what comes next. */
export function surveyProgress(
  survey: Pick<SurveyRecord, 'setUp' | 'characteristic' | 'readings'>,
): SurveyProgress {
  const spots = surveySpots(survey.setUp, survey.characteristic)
  const current = new Map(survey.readings.map((one) => [spotKey(one), one]))
  const open = spots.filter((one) => !current.has(spotKey(one)))
  return { spots, current, next: open[0] ?? null, doneCount: spots.length - open.length }
}
