import { calculatorResponseSchemas } from './calculator-schemas.ts'
import { dynamicResponseSchemas } from './dynamic-schemas.ts'
import { findingResponseSchemas } from './finding-schemas.ts'
import { answer, list, num, oneOf, text, whole } from './json-schema.ts'
import { leakResponseSchemas } from './leak-schemas.ts'
import { wholeFlatnessAnswer } from './photo-schemas.ts'
import { runOutResponseSchemas } from './run-out-schemas.ts'
import { stripResponseSchemas } from './strip-schemas.ts'

const budget = list(
  answer({
    source: text,
    value: num(),
    distribution: text,
    sensitivity: num(),
    contribution: num(),
    degreesOfFreedom: { type: ['number', 'null'] },
  }),
)

/** What each answer holds at least. */
export const responseSchemas: Readonly<Record<string, unknown>> = {
  apiMarkedFlatnessAnswer: answer({ ...wholeFlatnessAnswer, residualsBands: list(num()), budget }),
  apiPhotoFlatnessAnswer: answer({ ...wholeFlatnessAnswer, budget }),
  apiCountedFlatnessAnswer: answer({
    method: text,
    wavelengthNm: num(),
    bandHeightUm: num(),
    bands: num(),
    flatnessUm: num(),
    flatnessUin: num(),
    form: text,
    sees: text,
    standardUncertaintyUm: num(),
    expandedUncertaintyUm: num(),
    coverageFactor: num(),
    effectiveDegreesOfFreedom: { type: ['number', 'null'] },
    budget,
  }),
  apiPressureChangeAnswer: {
    ...answer({ method: text, pressureDropKPa: num() }),
    properties: {
      method: text,
      leakPaM3PerS: num(),
      leakMolPerS: num(),
      leakMbarLPerS: num(),
      leakSccm0C: num(),
      leakMlPerMin: num(),
      pressureDropKPa: num(),
      uncompensatedPaM3PerS: num(),
      settling: oneOf(['settled', 'corrected', 'unsettled']),
      smallestDetectablePaM3PerS: num(),
      standardUncertaintyPaM3PerS: num(),
      expandedUncertaintyPaM3PerS: num(),
      coverageFactor: num(),
      budget,
    },
  },
  ...calculatorResponseSchemas,
  ...dynamicResponseSchemas,
  ...leakResponseSchemas,
  ...runOutResponseSchemas,
  ...findingResponseSchemas,
  ...stripResponseSchemas,
  apiCreateCustomerAnswer: answer({ id: whole, name: text, address: text, contact: text }),
  apiCreateWorkOrderAnswer: answer({ id: whole, number: text, stage: text }),
  apiShowWorkOrderAnswer: answer({ id: whole, number: text, stage: text }),
  apiListWorkOrdersAnswer: answer({ items: list({}), nextCursor: { type: ['string', 'null'] } }),
  apiCreateFlatnessReadingAnswer: answer({ id: whole, bandHeightUm: num(), sees: text }),
  apiCreateStaticTestAnswer: answer({ id: whole, leakPaM3PerS: num(), pressureDropKPa: num() }),
  apiCreateMeasuredValueAnswer: answer({
    id: whole,
    valueUm: num(),
    method: text,
    uncertainty: {},
  }),
  apiCreateRunOutSurveyAnswer: answer({
    id: whole,
    measuredValueId: whole,
    characteristic: text,
    condition: text,
    totalIndicatorReadingUm: num(),
    cautions: list(text),
    standardUncertaintyUm: num(),
    expandedUncertaintyUm: num(),
    coverageFactor: num(),
    budget,
    method: text,
    recordedAt: text,
  }),
  apiCreateLapCycleAnswer: answer({ id: whole, componentId: whole, plate: text, recordedAt: text }),
  apiHandOverAnswer: answer({ id: whole, at: text, byName: text }),
  apiShowCertificateAnswer: answer({ number: text, revision: whole, sha256: text, record: {} }),
  apiVerifyAnswer: answer({ number: text }),
  Anything: {},
  Problem: answer({ type: text, title: text, status: whole, detail: text }),
}
