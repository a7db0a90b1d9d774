import { surveyCharacteristics } from '../../domain/characteristic.ts'
import {
  contactPoints,
  floatHolds,
  surveyBounds,
  surveyKindOf,
  surveyPlaces,
  sweptSurfaces,
  turnedParts,
} from '../../domain/dial-survey.ts'
import { readingConditions } from '../../domain/flatness.ts'
import { dialPointBounds } from '../../domain/parse-dial-points.ts'
import { runOutBounds, runOutKinds } from '../../domain/parse-run-out-request.ts'
import {
  bodyReadingCount,
  type runOutSurveyFields,
} from '../../domain/parse-run-out-survey-body.ts'
import { turnDirections } from '../../domain/parse-survey-set-up.ts'
import { list, num, object, oneOf, text, whole } from './json-schema.ts'

const turning = surveyCharacteristics.filter((one) =>
  runOutKinds.some((kind) => kind === surveyKindOf[one]),
)

/** What a survey takes that is recorded at once. */
export const surveyRequestSchemas = {
  apiCreateRunOutSurveyRequest: object(
    {
      readings: list(
        object({ angleDeg: num(dialPointBounds.angleDeg), valueUm: num(surveyBounds.readingUm) }, [
          'angleDeg',
          'valueUm',
        ]),
        bodyReadingCount,
      ),
      kind: oneOf(runOutKinds),
      characteristic: oneOf(turning),
      condition: oneOf(readingConditions),
      place: oneOf(surveyPlaces),
      turned: oneOf(turnedParts),
      surface: oneOf(sweptSurfaces),
      contact: oneOf(contactPoints),
      leverAngleDeg: num(surveyBounds.leverAngleDeg),
      sweptDiameterMm: num(surveyBounds.diameterMm),
      sealMeanDiameterMm: num(surveyBounds.diameterMm),
      readingStandardUncertaintyUm: num(runOutBounds.uncertaintyUm),
      sizeMm: num(surveyBounds.diameterMm),
      direction: oneOf(turnDirections),
      floatHeld: oneOf(floatHolds),
      lockOutReference: text,
      sagUm: num(surveyBounds.sagUm),
      topAngleDeg: num(surveyBounds.angleDeg),
      instrumentId: whole,
      note: text,
      replacesId: whole,
      reason: text,
    } satisfies Record<(typeof runOutSurveyFields)[number], unknown>,
    ['readings', 'kind', 'instrumentId'],
  ),
} as const
