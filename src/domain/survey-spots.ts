import type { SurveyCharacteristic } from './characteristic.ts'
import { type SurveySetUp, type SurveySpot, surveyKindOf } from './dial-survey.ts'

/** Everything that a survey asks for, in the order in which it is read. */
export function surveySpots(
  setUp: SurveySetUp,
  characteristic: SurveyCharacteristic,
): readonly SurveySpot[] {
  const isTwoEnds = surveyKindOf[characteristic] === 'two-ends'
  const positionCount = isTwoEnds ? 2 : setUp.anglesDeg.length + (setUp.isClosed ? 1 : 0)
  const planeCount = Math.max(1, setUp.planesMm.length)
  const indicators = setUp.secondInstrumentId === null ? (['first'] as const) : both
  const upTo = (count: number) => Array.from({ length: count }, (_, index) => index)
  return upTo(planeCount).flatMap((planeIndex) =>
    upTo(setUp.turnsCount).flatMap((turnIndex) =>
      upTo(positionCount).flatMap((positionIndex) =>
        indicators.map((indicator) => ({ planeIndex, turnIndex, positionIndex, indicator })),
      ),
    ),
  )
}

const both = ['first', 'second'] as const

/** Names a spot, the same for the same place. */
export function spotKey(spot: SurveySpot): string {
  return `${spot.planeIndex}-${spot.turnIndex}-${spot.positionIndex}-${spot.indicator}`
}
