import type { DialPoint } from '../science/runout/dial-point.ts'
import { minimumZoneRoundness } from '../science/runout/minimum-zone-roundness.ts'
import { computeSurveyPlane, type SpotValue } from './compute-survey-plane.ts'
import { type SurveyRecord, surveyKindOf } from './dial-survey.ts'
import { surveyProgress } from './survey-progress.ts'
import type { SurveyResult } from './survey-result.ts'
import { spotKey } from './survey-spots.ts'

/** Everything that a polar plot of one plane shows; complete in itself. */
export type DrawnSurveyPlane = {
  /** Null where the survey has no planes. */
  readonly positionMm: number | null
  /** Of each turn, corrected as the figures are. */
  readonly turns: readonly (readonly DialPoint[])[]
  readonly closing: readonly DialPoint[]
  readonly points: readonly DialPoint[]
  readonly meanUm: number
  readonly eccentricityUm: number
  readonly directionDeg: number | null
  readonly zone: {
    readonly cosineUm: number
    readonly sineUm: number
    readonly innerUm: number
    readonly outerUm: number
  }
}

/**
 * What is drawn of a recorded survey, plane by plane: readings that were overtaken are not. Empty
 * for a survey between two ends, which has no circle.
 */
export function drawnSurvey(
  survey: Pick<SurveyRecord, 'setUp' | 'characteristic' | 'readings'>,
  result: SurveyResult,
): readonly DrawnSurveyPlane[] {
  if (surveyKindOf[survey.characteristic] === 'two-ends') return []
  return result.planes.map(({ positionMm, points, figures }, planeIndex) => {
    const turns = turnsOf(survey, planeIndex)
    return {
      positionMm,
      turns: turns.map((one) => one.points),
      closing: turns.flatMap((one) => one.closing),
      points,
      meanUm: figures.meanUm,
      eccentricityUm: figures.eccentricityUm,
      directionDeg: figures.eccentricityDirectionDeg,
      zone: zoneOf(points),
    }
  })
}

/** Each turn computed as if it were the only one. */
function turnsOf(
  survey: Pick<SurveyRecord, 'setUp' | 'characteristic' | 'readings'>,
  planeIndex: number,
) {
  const { setUp } = survey
  const { current } = surveyProgress(survey)
  const perUm = Math.cos(((setUp.leverAngleDeg ?? 0) * Math.PI) / 180)
  return Array.from({ length: setUp.turnsCount }, (_, turnIndex) => {
    const umAt: SpotValue = (spot) => {
      const reading = current.get(spotKey({ ...spot, turnIndex }))
      if (reading === undefined) throw new RangeError('drawnSurvey requires a whole survey')
      return reading.um
    }
    const asked = { planeIndex, umAt, readingStandardUncertaintyUm: null }
    const { points, turns } = computeSurveyPlane({ ...setUp, turnsCount: 1 }, asked)
    const drift = turns[0]?.closingDriftUm ?? null
    const first = points[0]
    const closing =
      drift === null || first === undefined
        ? []
        : [{ angleDeg: first.angleDeg, valueUm: first.valueUm + drift * perUm }]
    return { points, closing }
  })
}

function zoneOf(points: readonly DialPoint[]): DrawnSurveyPlane['zone'] {
  const { cosineUm, sineUm } = minimumZoneRoundness(points)
  const left = points.map(({ angleDeg, valueUm }) => {
    const angle = (angleDeg * Math.PI) / 180
    return valueUm - cosineUm * Math.cos(angle) - sineUm * Math.sin(angle)
  })
  return { cosineUm, sineUm, innerUm: Math.min(...left), outerUm: Math.max(...left) }
}
