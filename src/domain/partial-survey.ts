import { type SurveyRecord, surveyBounds, surveyKindOf } from './dial-survey.ts'
import { surveyProgress } from './survey-progress.ts'
import { spotKey } from './survey-spots.ts'
import { tellsTurn } from './tells-turn.ts'

/**
 * The part of a survey that can speak already: its first plane and turn with the positions read so
 * far, or all of it once that is read; null while fewer than three positions are, or they lie bunched.
 */
export function partialSurvey(survey: SurveyRecord): SurveyRecord | null {
  const { setUp, characteristic } = survey
  const { current, next } = surveyProgress(survey)
  if (next === null) return survey
  const kind = surveyKindOf[characteristic]
  if (kind === 'two-ends' || kind === 'planes') return null
  const indicators =
    setUp.secondInstrumentId === null ? (['first'] as const) : (['first', 'second'] as const)
  const read = setUp.anglesDeg.flatMap((angleDeg, positionIndex) => {
    const spots = indicators.map((indicator) => {
      const spot = { planeIndex: 0, turnIndex: 0, positionIndex, indicator }
      return current.get(spotKey(spot))
    })
    return spots.every((one) => one !== undefined) ? [{ angleDeg, spots }] : []
  })
  if (read.length < surveyBounds.positionCount.min) return null
  if (!tellsTurn(read.map((one) => one.angleDeg))) return null
  return {
    ...survey,
    setUp: {
      ...setUp,
      anglesDeg: read.map((one) => one.angleDeg),
      turnsCount: 1,
      isClosed: false,
    },
    readings: read.flatMap(({ spots }, positionIndex) =>
      spots.flatMap((one) => (one === undefined ? [] : [{ ...one, positionIndex }])),
    ),
  }
}
