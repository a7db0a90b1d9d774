import { type DialSurvey, type SurveySpot, surveyKindOf } from '../../src/domain/dial-survey.ts'
import { numberText } from '../figures/number-text.ts'
import { words } from '../words/en.ts'

type Survey = Pick<DialSurvey, 'setUp' | 'characteristic'>

/** What is read at a spot, in large: a position with its angle, or what to do with the shaft. */
export function spotTitle(survey: Survey, spot: SurveySpot): string {
  const w = words.surveys
  const { anglesDeg } = survey.setUp
  const { characteristic } = survey
  if (characteristic === 'end-play' || characteristic === 'radial-lift') {
    return w.ends[characteristic][spot.positionIndex === 0 ? 0 : 1]
  }
  const angle = anglesDeg[spot.positionIndex]
  if (angle === undefined) return w.closingPosition
  return w.position(angleText(angle), spot.positionIndex + 1)
}

/** Which turn, plane and indicator it belongs to; '' where there is one of each. */
export function spotDetail(survey: Survey, spot: SurveySpot): string {
  const w = words.surveys
  const { turnsCount, planesMm, secondInstrumentId } = survey.setUp
  const count = surveyKindOf[survey.characteristic] === 'two-ends' ? w.repeatOf : w.turnOf
  const plane = planesMm[spot.planeIndex]
  return [
    ...(plane === undefined ? [] : [w.planeAt(numberText(plane))]),
    ...(turnsCount > 1 ? [count(spot.turnIndex + 1, turnsCount)] : []),
    ...(secondInstrumentId === null
      ? []
      : [spot.indicator === 'first' ? w.first : w.secondIndicator]),
  ].join(', ')
}

/** At most one decimal: nobody sets an angle finer by hand. */
export function angleText(deg: number): string {
  return numberText(Math.round(deg * 10) / 10)
}
