import { bandPatterns, flatnessBounds, readingConditions } from '../../domain/flatness.ts'
import { decisionProbabilityBounds } from '../../domain/parse-agreed-rule.ts'
import { countedFlatnessBounds } from '../../domain/parse-counted-flatness-request.ts'
import { pressureChangeBounds } from '../../domain/parse-pressure-change-request.ts'
import type { receiptFields } from '../../domain/parse-receipt.ts'
import { arrangements, componentKinds } from '../../domain/seal.ts'
import { services } from '../../domain/service.ts'
import { staticTestBounds, testSections } from '../../domain/static-test.ts'
import { decontaminationStates } from '../../domain/work-order.ts'
import { decisionRules } from '../../science/acceptance/decision-rule.ts'
import { lampIds } from '../../science/optics/lamps.ts'

type Bounds = { readonly min: number; readonly max: number }
const num = (bounds?: Bounds) => ({
  type: 'number',
  ...(bounds === undefined ? {} : { minimum: bounds.min, maximum: bounds.max }),
})
const whole = { type: 'integer' }
const text = { type: 'string' }
const oneOf = (values: readonly string[]) => ({ type: 'string', enum: values })
const object = (properties: Record<string, unknown>, required: readonly string[] = []) => ({
  type: 'object',
  additionalProperties: false,
  properties,
  ...(required.length === 0 ? {} : { required }),
})
const list = (items: unknown, bounds?: Bounds) => ({
  type: 'array',
  items,
  ...(bounds === undefined ? {} : { minItems: bounds.min, maxItems: bounds.max }),
})
/** An answer may grow: what stands here is promised, more may come. */
const answer = (properties: Record<string, unknown>) => ({
  type: 'object',
  properties,
  required: Object.keys(properties),
})

const { lengthMm, deltaK, expansionPerK } = countedFlatnessBounds.thermal
const reading = object(
  {
    directionDeg: num(flatnessBounds.directionDeg),
    bands: num(countedFlatnessBounds.bands),
    bowMm: num(),
    spacingMm: num(),
  },
  ['directionDeg'],
)
const state = object(
  {
    timeS: num(),
    pressureKPaAbs: num(pressureChangeBounds.pressureKPaAbs),
    temperatureC: num(pressureChangeBounds.temperatureC),
  },
  ['timeS', 'pressureKPaAbs'],
)
const correction = { replacesId: whole, reason: text, confirmBeyondWindow: { type: 'boolean' } }
const component = object(
  {
    kind: oneOf(componentKinds),
    material: text,
    outerDiameterMm: num(),
    innerDiameterMm: num(),
    noseHeightMm: num(),
    minimumNoseHeightMm: num(),
  },
  ['kind'],
)
const seal = object(
  {
    serial: text,
    drawing: text,
    drawingRevision: text,
    arrangement: oneOf(arrangements),
    shaftDiameterMm: num(),
    size: text,
    components: list(component, { min: 1, max: componentKinds.length }),
  },
  ['serial', 'arrangement', 'shaftDiameterMm', 'components'],
)
const receiptTypes: Readonly<Record<(typeof receiptFields)[number], unknown>> = {
  customerOrder: text,
  reasonForRemoval: text,
  decontamination: oneOf(decontaminationStates),
  lastFluid: text,
  sealedPressureKPa: num(),
  serviceTemperatureC: num(),
  shaftSpeedPerMin: num(),
  dueOn: { type: 'string', format: 'date' },
  limitSetId: whole,
  service: oneOf(services),
  decisionRule: oneOf(decisionRules),
  decisionProbability: num(decisionProbabilityBounds),
  ruleReference: text,
}

/** What each request takes; bounds and choices come from the domain, so that they can't drift. */
export const requestSchemas: Readonly<Record<string, unknown>> = {
  apiCountedFlatnessRequest: object(
    {
      lamp: oneOf(lampIds),
      wavelengthNm: num(countedFlatnessBounds.wavelengthNm),
      viewingAngleDeg: num(flatnessBounds.viewingAngleDeg),
      pattern: oneOf(bandPatterns),
      ringCentre: oneOf(['high', 'low']),
      readings: list(reading),
      readingHalfWidthBands: num(countedFlatnessBounds.halfWidthBands),
      opticalFlatToleranceUm: num(countedFlatnessBounds.toleranceUm),
      viewingAngleLimitDeg: num(flatnessBounds.viewingAngleDeg),
      thermal: object({
        deltaK: num(deltaK),
        expansionPerK: num(expansionPerK),
        diameterMm: num(lengthMm),
        thicknessMm: num(lengthMm),
      }),
      repeatability: object({ standardDeviationBands: num(), count: whole }),
    },
    ['pattern'],
  ),
  apiPressureChangeRequest: object(
    {
      volumeL: num(pressureChangeBounds.volumeL),
      referenceTemperatureC: num(pressureChangeBounds.temperatureC),
      start: state,
      end: state,
      trace: list(state, pressureChangeBounds.sampleCount),
      uncertainties: object({
        volumeRelative: num(pressureChangeBounds.relative),
        pressurePa: num(pressureChangeBounds.pressurePa),
        temperatureK: num(pressureChangeBounds.uncertainty),
        timeS: num(),
      }),
    },
    ['volumeL'],
  ),
  apiCreateCustomerRequest: object({ name: text, address: text, contact: text }, ['name']),
  apiCreateWorkOrderRequest: object(
    {
      customerId: whole,
      sealId: whole,
      seal,
      equipmentId: whole,
      equipment: object({ tag: text, description: text, serviceFluid: text }, ['tag']),
      ...receiptTypes,
      confirmBeyondWindow: { type: 'boolean' },
    },
    ['customerId'],
  ),
  apiCreateFlatnessReadingRequest: object(
    {
      faceId: whole,
      condition: oneOf(readingConditions),
      lampInstrumentId: whole,
      opticalFlatInstrumentId: whole,
      lamp: oneOf(lampIds),
      pattern: oneOf(bandPatterns),
      ringCentre: oneOf(['high', 'low']),
      readings: list(reading, flatnessBounds.directionCount),
      viewingAngleDeg: num(flatnessBounds.viewingAngleDeg),
      soakMin: num(flatnessBounds.soakMin),
      temperatureC: num(flatnessBounds.temperatureC),
      note: text,
      ...correction,
    },
    ['faceId', 'condition', 'lampInstrumentId', 'opticalFlatInstrumentId', 'pattern'],
  ),
  apiCreateStaticTestRequest: object(
    {
      section: oneOf(testSections),
      volumeL: num(staticTestBounds.volumeL),
      referenceTemperatureC: num(),
      start: state,
      end: state,
      startedAt: { type: 'string', format: 'date-time' },
      stabilisationS: num(staticTestBounds.stabilisationS),
      gaugeInstrumentId: whole,
      thermometerInstrumentId: whole,
      note: text,
      ...correction,
    },
    ['volumeL', 'start', 'end', 'gaugeInstrumentId'],
  ),
  apiHandOverRequest: object({ note: text }),
}

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
  apiCreateCustomerAnswer: answer({ id: whole, name: text, address: text, contact: text }),
  apiCreateWorkOrderAnswer: answer({ id: whole, number: text, stage: text }),
  apiShowWorkOrderAnswer: answer({ id: whole, number: text, stage: text }),
  apiListWorkOrdersAnswer: answer({ items: list({}), nextCursor: { type: ['string', 'null'] } }),
  apiCreateFlatnessReadingAnswer: answer({ id: whole, bandHeightUm: num() }),
  apiCreateStaticTestAnswer: answer({ id: whole, leakPaM3PerS: num(), pressureDropKPa: num() }),
  apiHandOverAnswer: answer({ id: whole, at: text, byName: text }),
  apiShowCertificateAnswer: answer({ number: text, revision: whole, sha256: text, record: {} }),
  apiVerifyAnswer: answer({ number: text }),
  Anything: {},
  Problem: answer({ type: text, title: text, status: whole, detail: text }),
}
