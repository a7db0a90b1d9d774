import { totalIndicatorReadingUm } from '../science/runout/total-indicator-reading-um.ts'
import { surveyCharacteristics } from './characteristic.ts'
import { checkPositions } from './check-positions.ts'
import { checkRange } from './check-range.ts'
import { surveyBounds, surveyKindOf } from './dial-survey.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { readingConditions } from './flatness.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { dialPointBounds } from './parse-dial-points.ts'
import { noteLength } from './parse-flatness-reading.ts'
import type { MeasuredValueContext } from './parse-measured-value.ts'
import { runOutBounds, runOutKinds } from './parse-run-out-request.ts'
import type { NewSurveyReading } from './parse-survey-readings.ts'
import { type NewSurvey, readSurveySetUp } from './parse-survey-set-up.ts'
import type { Parsed } from './parsed.ts'
import { splitTurns, type Turns } from './split-turns.ts'

export const runOutSurveyFields = [
  'readings',
  'kind',
  'characteristic',
  'condition',
  'place',
  'turned',
  'surface',
  'contact',
  'leverAngleDeg',
  'sweptDiameterMm',
  'sealMeanDiameterMm',
  'readingStandardUncertaintyUm',
  'sizeMm',
  'direction',
  'floatHeld',
  'lockOutReference',
  'sagUm',
  'topAngleDeg',
  'instrumentId',
  'note',
  ...correctionFields,
] as const

export type RunOutSurveyBody = {
  readonly survey: NewSurvey
  readonly readings: readonly NewSurveyReading[]
  /** As stated; null: taken from the instrument. */
  readonly readingStandardUncertaintyUm: number | null
}

const usualOfKind = { radial: 'shaft-run-out', face: 'chamber-face-squareness' } as const

/**
 * Reads a whole survey as a program sends it: readings in um, one full turn or the same turn several
 * times over, perhaps closed at its first position. A kind without a characteristic is the usual one.
 */
export function parseRunOutSurveyBody(
  input: Input,
  context: MeasuredValueContext,
): Parsed<RunOutSurveyBody> {
  const fields = openFields(input)
  fields.only(...runOutSurveyFields)
  const kind = fields.choice('kind', runOutKinds)
  const characteristic =
    fields.optionalChoice('characteristic', surveyCharacteristics) ?? usualOfKind[kind]
  if (surveyKindOf[characteristic] !== kind) {
    const fitting = surveyCharacteristics.filter((one) => surveyKindOf[one] === kind)
    fields.fault('characteristic', 'not-a-choice', { choices: fitting.join(', ') })
  }
  const condition = fields.optionalChoice('condition', readingConditions) ?? 'as-left'
  const turns = parseTurns(fields)
  const isRegister = characteristic === 'register-concentricity'
  if (!isRegister && fields.isGiven('surface')) {
    fields.choice('surface', [kind === 'face' ? ('face' as const) : ('outside' as const)])
  }
  const setUp = readSurveySetUp(fields, input, { context, characteristic, isKnown: true })
  // Nothing was said of where it was read: then the record doesn't say it either.
  const place = fields.isGiven('place') ? setUp.place : null
  const isPlaceKnown = !fields.faults.some((one) => one.field === 'place')
  if (isPlaceKnown && place === 'machine' && setUp.lockOutReference === '') {
    fields.fault('lockOutReference', 'empty')
  }
  checkTravel(fields, context, { id: setUp.instrumentId, turns })
  return fields.finish({
    survey: {
      characteristic,
      condition,
      setUp: {
        ...setUp,
        place,
        anglesDeg: turns.anglesDeg,
        turnsCount: turns.turnsCount,
        isClosed: turns.isClosed,
        unit: 'um',
      },
      note: fields.optionalText('note', noteLength.max),
      ...parseCorrection(fields),
    },
    readings: turns.readings,
    readingStandardUncertaintyUm: fields.optionalDecimal(
      'readingStandardUncertaintyUm',
      runOutBounds.uncertaintyUm,
    ),
  })
}

/** Every position of every turn, each turn closed. */
export const bodyReadingCount = {
  min: surveyBounds.positionCount.min,
  max: (surveyBounds.positionCount.max + 1) * surveyBounds.turnsCount.max,
} as const

/** An indicator has to travel as far as its readings lie apart. */
function checkTravel(
  fields: Fields,
  { instruments, exceptions, today: day }: MeasuredValueContext,
  { id, turns }: { readonly id: number; readonly turns: Turns },
): void {
  if (fields.faults.length > 0) return
  const values = turns.readings.map((one) => one.um)
  const travelUm = totalIndicatorReadingUm(values)
  const instrument = instruments.find((one) => one.id === id)
  const readings = { base: 'um', ways: [[travelUm]] } as const
  checkRange(fields, 'instrumentId', { instrument, readings, day, recordedOn: day, exceptions })
}

/** Reads the readings and splits them into turns. */
function parseTurns(fields: Fields): Turns {
  const none: Turns = { anglesDeg: [], turnsCount: 1, isClosed: false, readings: [] }
  const before = fields.faults.length
  const points = fields.list('readings', bodyReadingCount).map((part) => {
    part.only('angleDeg', 'valueUm')
    const angleDeg = part.decimal('angleDeg', dialPointBounds.angleDeg)
    const um = part.decimal('valueUm', surveyBounds.readingUm)
    return { angleDeg, um, typed: part.typed('valueUm').trim() }
  })
  if (fields.faults.length > before || points.length === 0) return none
  const turns = splitTurns(points)
  const { positionCount, turnsCount } = surveyBounds
  if (turns === null || turns.turnsCount > turnsCount.max) {
    fields.fault('readings', 'no-whole-turns', { max: turnsCount.max })
    return none
  }
  const count = turns.anglesDeg.length
  if (count > positionCount.max) fields.fault('readings', 'too-many-positions', positionCount)
  else checkPositions(fields, 'readings', turns.anglesDeg)
  return turns
}
