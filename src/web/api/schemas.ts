import { measuredCharacteristics } from '../../domain/characteristic.ts'
import { faceStates } from '../../domain/face-state.ts'
import { bandPatterns, flatnessBounds, readingConditions } from '../../domain/flatness.ts'
import {
  abrasives,
  lapCycleBounds,
  lapFigureNames,
  lapPurposes,
  plateForms,
} from '../../domain/lap-cycle.ts'
import { lengthUnits, measuredValueBounds, traceDirections } from '../../domain/measured-value.ts'
import { decisionProbabilityBounds } from '../../domain/parse-agreed-rule.ts'
import { countedFlatnessBounds } from '../../domain/parse-counted-flatness-request.ts'
import { repeatCountBounds } from '../../domain/parse-flatness-budget.ts'
import type { receiptFields } from '../../domain/parse-receipt.ts'
import { arrangements, componentKinds } from '../../domain/seal.ts'
import { services } from '../../domain/service.ts'
import { unreadableCauses } from '../../domain/unreadable-cause.ts'
import { decontaminationStates } from '../../domain/work-order.ts'
import { decisionRules } from '../../science/acceptance/decision-rule.ts'
import { lampIds } from '../../science/optics/lamps.ts'
import { calculatorRequestSchemas } from './calculator-schemas.ts'
import { correction } from './correction-schema.ts'
import { dynamicRequestSchemas } from './dynamic-schemas.ts'
import { findingRequestSchemas } from './finding-schemas.ts'
import { list, num, object, oneOf, text, whole } from './json-schema.ts'
import { leakRequestSchemas } from './leak-schemas.ts'
import { markedRequestSchemas } from './marked-schemas.ts'
import { photoRequestSchemas } from './photo-schemas.ts'
import { pressureRequestSchemas } from './pressure-schemas.ts'
import { runOutRequestSchemas } from './run-out-schemas.ts'
import { stripRequestSchemas } from './strip-schemas.ts'
import { surveyRequestSchemas } from './survey-schemas.ts'
import { wholeFaceRequestSchemas } from './whole-face-schemas.ts'

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
const bow = object({
  deltaK: num(deltaK),
  expansionPerK: num(expansionPerK),
  diameterMm: num(lengthMm),
  thicknessMm: num(lengthMm),
})
const repeatability = object({
  standardDeviationBands: num(),
  count: whole,
  degreesOfFreedom: whole,
})
const flatnessBudget = {
  readingHalfWidthBands: num(countedFlatnessBounds.halfWidthBands),
  opticalFlatToleranceUm: num(countedFlatnessBounds.toleranceUm),
  viewingAngleLimitDeg: num(flatnessBounds.viewingAngleDeg),
  thermal: bow,
}
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
      ...flatnessBudget,
      flatThermal: bow,
      wavelengthHalfWidthNm: num(countedFlatnessBounds.wavelengthHalfWidthNm),
      repeatability,
    },
    ['pattern'],
  ),
  ...calculatorRequestSchemas,
  ...dynamicRequestSchemas,
  ...leakRequestSchemas,
  ...pressureRequestSchemas,
  ...runOutRequestSchemas,
  ...surveyRequestSchemas,
  ...findingRequestSchemas,
  ...photoRequestSchemas,
  ...markedRequestSchemas,
  ...wholeFaceRequestSchemas,
  ...stripRequestSchemas,
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
      unreadableCause: oneOf(unreadableCauses),
      readings: list(reading, flatnessBounds.directionCount),
      viewingAngleDeg: num(flatnessBounds.viewingAngleDeg),
      wavelengthNm: num(countedFlatnessBounds.wavelengthNm),
      ...flatnessBudget,
      flatThermal: bow,
      repeatability,
      repeats: list(object({ bands: num(flatnessBounds.bands) }, ['bands']), repeatCountBounds),
      soakMin: num(flatnessBounds.soakMin),
      temperatureC: num(flatnessBounds.temperatureC),
      note: text,
      ...correction,
    },
    ['faceId', 'condition', 'lampInstrumentId', 'opticalFlatInstrumentId', 'pattern'],
  ),
  apiCreateMeasuredValueRequest: object(
    {
      characteristic: oneOf(measuredCharacteristics),
      componentId: whole,
      condition: oneOf(readingConditions),
      instrumentId: whole,
      unit: oneOf(lengthUnits),
      readings: list(object({ value: num() }, ['value']), measuredValueBounds.readingCount),
      sizeMm: num(measuredValueBounds.sizeMm),
      leverAngleDeg: num(measuredValueBounds.leverAngleDeg),
      cutOffMm: num(measuredValueBounds.cutOffMm),
      traceDirection: oneOf(traceDirections),
      tipRadiusUm: num(measuredValueBounds.tipRadiusUm),
      evaluationLengthMm: num(measuredValueBounds.evaluationLengthMm),
      faceState: oneOf(faceStates),
      temperatureHalfWidthK: num(measuredValueBounds.temperatureHalfWidthK),
      settingStandardUncertaintyUm: num(measuredValueBounds.settingStandardUncertaintyUm),
      note: text,
      ...correction,
    },
    ['characteristic', 'condition', 'instrumentId', 'unit', 'readings'],
  ),
  apiCreateLapCycleRequest: object(
    {
      componentId: whole,
      purpose: oneOf(lapPurposes),
      plate: text,
      plateForm: oneOf(plateForms),
      abrasive: oneOf(abrasives),
      grit: text,
      ...Object.fromEntries(lapFigureNames.map((name) => [name, num(lapCycleBounds[name])])),
      isNewRing: { type: 'boolean' },
      note: text,
      ...correction,
    },
    ['componentId', 'plate'],
  ),
  apiHandOverRequest: object({ note: text }),
}
