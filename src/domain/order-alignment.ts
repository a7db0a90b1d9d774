import { type Alignment, type AlignmentSurvey, alignment } from './alignment.ts'
import type { CertifiedSurvey } from './certified-survey.ts'
import { certifySurvey } from './certify-survey.ts'
import { surveyCharacteristics } from './characteristic.ts'
import type { FoundMovement } from './compare-worn-track.ts'
import type { SurveyRecord } from './dial-survey.ts'
import type { Evidence } from './evidence.ts'
import { type JudgedValue, judgedValues } from './judged-evidence.ts'
import { limitCaseOf } from './limit-case-of.ts'
import type { LimitSet } from './limit-set.ts'
import { type LimitConflict, otherLimits } from './other-limits.ts'
import { standingValues } from './standing.ts'
import type { SurveyResult } from './survey-result.ts'

/** A survey that speaks for a machine, with what each limit set says of it. */
export type SpeakingSurvey = {
  readonly judgedValue: JudgedValue
  readonly certified: CertifiedSurvey
  readonly conflict: LimitConflict
}

export type OrderAlignment = {
  readonly alignment: Alignment
  readonly surveys: readonly SpeakingSurvey[]
  /** As found, what wore the seal; as left only where nothing was swept as found. */
  readonly found: readonly FoundMovement[]
}

/**
 * The surveys of an order that speak, as left before as found, where the parts lie and what other
 * limits say.
 * @param sets those in force and the order's own
 */
export function orderAlignment(evidence: Evidence, sets: readonly LimitSet[]): OrderAlignment {
  const standing = standingValues(evidence.measuredValues)
  const spoken = judgedValues(evidence).filter((one) => standing.includes(one.measured))
  const surveyed = spoken.flatMap((judgedValue) => {
    const found = recordedSurvey(evidence, judgedValue.measured.id)
    return found === null ? [] : [{ judgedValue, ...found }]
  })
  const speaking = newest(surveyed, ['as-left', 'as-found'])
  return {
    alignment: alignment(speaking.flatMap(alignedOf)),
    surveys: speaking.map(({ judgedValue, survey, result }) => ({
      judgedValue,
      certified: certifySurvey({ survey, result, ...judgedValue, isNewest: true }),
      conflict: conflictOf(judgedValue, evidence, sets),
    })),
    found: newest(surveyed, ['as-found', 'as-left']).map(({ survey, judgedValue }) => ({
      characteristic: survey.characteristic,
      totalUm: judgedValue.measured.valueUm,
      expandedUncertaintyUm: judgedValue.measured.uncertainty.expandedUncertainty,
    })),
  }
}

type Surveyed = {
  readonly judgedValue: JudgedValue
  readonly survey: SurveyRecord
  readonly result: SurveyResult
}

function recordedSurvey(
  { dialSurveys }: Pick<Evidence, 'dialSurveys'>,
  measuredValueId: number,
): Omit<Surveyed, 'judgedValue'> | null {
  const survey = dialSurveys.find((one) => one.end?.measuredValueId === measuredValueId)
  const result = survey?.end?.result ?? null
  return survey === undefined || result === null ? null : { survey, result }
}

/** One of each characteristic, of the first condition that there is one of. */
function newest(
  surveyed: readonly Surveyed[],
  conditions: readonly SurveyRecord['condition'][],
): readonly Surveyed[] {
  return surveyCharacteristics.flatMap((characteristic) => {
    const own = surveyed.filter((one) => one.survey.characteristic === characteristic)
    const found = conditions
      .map((condition) => own.find((one) => one.survey.condition === condition))
      .find((one) => one !== undefined)
    return found === undefined ? [] : [found]
  })
}

function alignedOf({ judgedValue, survey, result }: Surveyed): readonly AlignmentSurvey[] {
  const [plane] = result.planes
  if (plane === undefined) return []
  const { figures } = plane
  const { surface, isClockwise, sweptDiameterMm } = survey.setUp
  return [
    {
      measuredValueId: judgedValue.measured.id,
      characteristic: survey.characteristic,
      surface,
      isClockwise,
      totalUm: judgedValue.measured.valueUm,
      eccentricityUm: figures.eccentricityUm,
      directionDeg: figures.eccentricityDirectionDeg,
      roundnessUm: figures.roundnessLeastSquaresUm,
      sweptDiameterMm,
    },
  ]
}

function conflictOf(
  { measured }: JudgedValue,
  evidence: Evidence,
  sets: readonly LimitSet[],
): LimitConflict {
  const { seal, workOrder, limitSet } = evidence
  const { characteristic, valueUm, componentId, sizeMm } = measured
  const limitCase = limitCaseOf({ seal, workOrder, componentId, boreMm: sizeMm })
  return otherLimits({ characteristic, value: valueUm }, { sets, ownId: limitSet.id, limitCase })
}
