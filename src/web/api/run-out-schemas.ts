import { springCautions } from '../../domain/answer-spring.ts'
import { surveyPlaces } from '../../domain/dial-survey.ts'
import { dialPointBounds } from '../../domain/parse-dial-points.ts'
import { runOutBounds, type runOutFields, runOutKinds } from '../../domain/parse-run-out-request.ts'
import type { springFields } from '../../domain/parse-spring-request.ts'
import {
  straightnessBounds,
  type straightnessFields,
} from '../../domain/parse-straightness-request.ts'
import { springBounds } from '../../domain/spring-bounds.ts'
import { answer, list, num, object, oneOf, text, whole } from './json-schema.ts'

const numberOrNull = { type: ['number', 'null'] }

const dialReadings = list(
  object({ angleDeg: num(dialPointBounds.angleDeg), valueUm: num(dialPointBounds.valueUm) }, [
    'angleDeg',
    'valueUm',
  ]),
  dialPointBounds.count,
)

/** What the calculators of run-out, straightness and springs take. */
export const runOutRequestSchemas = {
  apiRunOutRequest: object(
    {
      readings: dialReadings,
      kind: oneOf(runOutKinds),
      sweptDiameterMm: num(runOutBounds.diameterMm),
      sealMeanDiameterMm: num(runOutBounds.diameterMm),
      readingStandardUncertaintyUm: num(runOutBounds.uncertaintyUm),
    } satisfies Record<(typeof runOutFields)[number], unknown>,
    ['readings', 'kind'],
  ),
  apiStraightnessRequest: object(
    {
      planes: list(
        object({ positionMm: num(straightnessBounds.positionMm), readings: dialReadings }, [
          'positionMm',
          'readings',
        ]),
        straightnessBounds.planeCount,
      ),
      support: oneOf(surveyPlaces),
      readingStandardUncertaintyUm: num(runOutBounds.uncertaintyUm),
    } satisfies Record<(typeof straightnessFields)[number], unknown>,
    ['planes', 'support'],
  ),
  apiSpringRequest: object(
    {
      springsCount: whole,
      freeLengthMm: num(springBounds.lengthMm),
      loads: list(
        object({ lengthMm: num(springBounds.lengthMm), loadN: num(springBounds.loadN) }, [
          'lengthMm',
          'loadN',
        ]),
        springBounds.loadCount,
      ),
      rateNPerMm: num(springBounds.rateNPerMm),
      workingLengthMm: num(springBounds.lengthMm),
      solidLengthMm: num(springBounds.lengthMm),
      faceOuterDiameterMm: num(springBounds.diameterMm),
      faceInnerDiameterMm: num(springBounds.diameterMm),
      designLoadN: num(springBounds.loadN),
      endPlayMm: num(springBounds.smallMm),
      removedUm: num(springBounds.removedUm),
      lengthStandardUncertaintyMm: num(springBounds.lengthUncertaintyMm),
      rateStandardUncertaintyNPerMm: num(springBounds.rateUncertaintyNPerMm),
    } satisfies Record<(typeof springFields)[number], unknown>,
    ['workingLengthMm'],
  ),
} as const

const expanded = {
  standardUncertaintyUm: num(),
  expandedUncertaintyUm: num(),
  coverageFactor: num(),
  budget: list({ type: 'object' }),
} as const

const turn = {
  totalIndicatorReadingUm: num(),
  eccentricityUm: num(),
  eccentricityDirectionDeg: numberOrNull,
  roundnessLeastSquaresUm: num(),
} as const

const runOut = answer({
  method: text,
  ...turn,
  fittedRunOutUm: num(),
  harmonics: list(answer({ order: whole, amplitudeUm: num(), phaseDeg: num() })),
  roundnessMinimumZoneUm: num(),
  couldBeMissedUm: num(),
  closingDriftUm: numberOrNull,
  cautions: list(oneOf(['positions-bunched', 'drift'])),
})

const straightness = answer({
  method: text,
  planes: list(answer({ positionMm: num(), ...turn, departureFromEndsUm: num() })),
  largestTotalIndicatorReadingUm: num(),
  largestAtMm: num(),
  straightnessMinimumZoneUm: num(),
  straightnessLeastSquaresUm: num(),
  bowUm: num(),
  bowAtMm: num(),
  bowDirectionDeg: num(),
  cautions: list(text),
})

const spring = answer({
  method: text,
  rateNPerMm: num(),
  rateStandardUncertaintyNPerMm: numberOrNull,
  freeLengthMm: num(),
  loadAtWorkingLengthN: num(),
  facePressureMPa: numberOrNull,
  remainingTravelMm: numberOrNull,
  loadPerMmN: num(),
  loadChangeByEndPlayN: numberOrNull,
  loadLostByLappingN: numberOrNull,
  shareOfDesignLoad: numberOrNull,
  cautions: list(oneOf(springCautions)),
})

/** What they answer at least; the rest comes where it was asked for. */
export const runOutResponseSchemas = {
  apiRunOutAnswer: {
    ...runOut,
    properties: {
      ...runOut.properties,
      tiltMrad: num(),
      tiltDeg: num(),
      tiltMmPerM: num(),
      tiltDirectionDeg: numberOrNull,
      movementAtSealUm: numberOrNull,
      ...expanded,
      standardUncertainties: { type: 'object' },
    },
  },
  apiStraightnessAnswer: {
    ...straightness,
    properties: { ...straightness.properties, ...expanded },
  },
  apiSpringAnswer: {
    ...spring,
    properties: {
      ...spring.properties,
      standardUncertaintyN: num(),
      expandedUncertaintyN: num(),
      coverageFactor: num(),
      budget: list({ type: 'object' }),
    },
  },
} as const
