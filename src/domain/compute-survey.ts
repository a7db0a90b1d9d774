import { centreLineStraightness } from '../science/runout/centre-line-straightness.ts'
import { faceTilt } from '../science/runout/face-tilt.ts'
import { computeSurveyPlane, type SpotValue } from './compute-survey-plane.ts'
import type { DialSurvey } from './dial-survey.ts'
import { surveyKindOf } from './dial-survey.ts'
import { surveyCautionsOf } from './survey-cautions-of.ts'
import type { SurveyPlane, SurveyResult } from './survey-result.ts'

/**
 * What the readings of a finished survey say. The same readings give the same figures, bit for bit.
 * @param umAt the reading of a spot in um, as the needle showed it
 * @param readingStandardUncertaintyUm of one reading; null where nothing is known of it
 * @throws RangeError where a spot has no reading
 */
export function computeSurvey(
  survey: Pick<DialSurvey, 'setUp' | 'characteristic'>,
  umAt: SpotValue,
  readingStandardUncertaintyUm: number | null,
): SurveyResult {
  const { setUp, characteristic } = survey
  const kind = surveyKindOf[characteristic]
  if (kind === 'two-ends') return twoEnds(survey, umAt, readingStandardUncertaintyUm)
  const planeCount = Math.max(1, setUp.planesMm.length)
  const planes = Array.from({ length: planeCount }, (_, planeIndex) =>
    computeSurveyPlane(setUp, { planeIndex, umAt, readingStandardUncertaintyUm }),
  )
  const meanOf = (plane: SurveyPlane) =>
    plane.turns.reduce((sum, one) => sum + one.totalUm, 0) / plane.turns.length
  const judgedPlaneIndex = planes.reduce(
    (best, one, i) => (meanOf(one) > meanOf(planes[best] as SurveyPlane) ? i : best),
    0,
  )
  const judged = planes[judgedPlaneIndex] as SurveyPlane
  const { sweptDiameterMm, sealMeanDiameterMm } = setUp
  return {
    planes,
    totalsUm: judged.turns.map((one) => one.totalUm),
    judgedPlaneIndex,
    tilt:
      kind === 'face' && sweptDiameterMm !== null
        ? faceTilt({
            amplitudeUm: judged.figures.eccentricityUm,
            sweptDiameterMm,
            sealMeanDiameterMm: sealMeanDiameterMm ?? undefined,
          })
        : null,
    straightness: kind === 'planes' ? straightnessOf(planes) : null,
    readingStandardUncertaintyUm,
    cautions: surveyCautionsOf(survey, planes),
  }
}

function twoEnds(
  { setUp }: Pick<DialSurvey, 'setUp'>,
  umAt: SpotValue,
  readingStandardUncertaintyUm: number | null,
): SurveyResult {
  const totalsUm = Array.from({ length: setUp.turnsCount }, (_, turnIndex) => {
    const at = (positionIndex: number) =>
      umAt({ planeIndex: 0, turnIndex, positionIndex, indicator: 'first' })
    return Math.abs(at(1) - at(0))
  })
  return {
    planes: [],
    totalsUm,
    judgedPlaneIndex: 0,
    tilt: null,
    straightness: null,
    readingStandardUncertaintyUm,
    cautions: [],
  }
}

function straightnessOf(planes: readonly SurveyPlane[]) {
  return centreLineStraightness(
    planes.map(({ positionMm, figures }) => ({
      positionMm: positionMm ?? 0,
      xUm: figures.harmonics[0]?.cosineUm ?? 0,
      yUm: figures.harmonics[0]?.sineUm ?? 0,
    })),
  )
}
