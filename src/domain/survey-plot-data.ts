import type { DialPoint } from '../science/runout/dial-point.ts'
import { minimumZoneRoundness } from '../science/runout/minimum-zone-roundness.ts'
import type { SurveyRecord, SurveySpot } from './dial-survey.ts'
import { surveyProgress } from './survey-progress.ts'
import type { SurveyResult } from './survey-result.ts'
import { spotKey } from './survey-spots.ts'

/** What a plot of one plane of a survey shows. */
export type SurveyPlotData = {
  readonly turns: readonly (readonly DialPoint[])[]
  readonly points: readonly DialPoint[]
  readonly fit: {
    readonly meanUm: number
    readonly eccentricityUm: number
    readonly directionDeg: number | null
  }
  readonly minimumZone: {
    readonly cosineUm: number
    readonly sineUm: number
    readonly innerUm: number
    readonly outerUm: number
  }
}

/** Null for a survey between two ends, which has no turn. */
export function surveyPlotData(
  survey: Pick<SurveyRecord, 'setUp' | 'characteristic' | 'readings'>,
  result: SurveyResult,
  planeIndex: number,
): SurveyPlotData | null {
  const plane = result.planes[planeIndex]
  if (plane === undefined) return null
  const { setUp } = survey
  const { figures, points } = plane
  const { cosineUm, sineUm } = minimumZoneRoundness(points)
  const rest = points.map(({ angleDeg, valueUm }) => {
    const t = (angleDeg * Math.PI) / 180
    return valueUm - cosineUm * Math.cos(t) - sineUm * Math.sin(t)
  })
  // With float or sag taken out, single turns are not what was read: their mean speaks.
  const isPlain = setUp.secondInstrumentId === null && setUp.sagUm === null
  return {
    turns: isPlain ? turnsOf(survey, planeIndex, figures.meanUm) : [points],
    points,
    fit: {
      meanUm: figures.meanUm,
      eccentricityUm: figures.eccentricityUm,
      directionDeg: figures.eccentricityDirectionDeg,
    },
    minimumZone: {
      cosineUm,
      sineUm,
      innerUm: Math.min(...rest),
      outerUm: Math.max(...rest),
    },
  }
}

/** Each turn about its own mean, as the mean of the turns is. */
function turnsOf(
  survey: Pick<SurveyRecord, 'setUp' | 'characteristic' | 'readings'>,
  planeIndex: number,
  meanUm: number,
): readonly (readonly DialPoint[])[] {
  const { setUp } = survey
  const { current } = surveyProgress(survey)
  const perUm = Math.cos(((setUp.leverAngleDeg ?? 0) * Math.PI) / 180)
  return Array.from({ length: setUp.turnsCount }, (_, turnIndex) => {
    const read = setUp.anglesDeg.flatMap((angleDeg, positionIndex) => {
      const spot: SurveySpot = { planeIndex, turnIndex, positionIndex, indicator: 'first' }
      const um = current.get(spotKey(spot))?.um
      return um === undefined ? [] : [{ angleDeg, valueUm: um * perUm }]
    })
    const mean = read.reduce((sum, one) => sum + one.valueUm, 0) / Math.max(1, read.length)
    return read.map((one) => ({ ...one, valueUm: one.valueUm - mean + meanUm }))
  })
}
