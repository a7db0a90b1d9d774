import { type SurveyCharacteristic, surveyCharacteristics } from './characteristic.ts'
import { checkPositions } from './check-positions.ts'
import {
  contactPoints,
  type DialSurvey,
  floatHolds,
  registerSides,
  type SurveyKind,
  type SurveySetUp,
  surveyBounds,
  surveyKindOf,
  surveyPlaces,
  turnedParts,
} from './dial-survey.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { readingConditions } from './flatness.ts'
import type { Instrument } from './instrument.ts'
import { fittingKinds } from './measured-family.ts'
import { lengthUnits } from './measured-value.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { parseInstrumentId } from './parse-instrument-id.ts'
import type { MeasuredValueContext } from './parse-measured-value.ts'
import { parseNumberList } from './parse-number-list.ts'
import type { Parsed } from './parsed.ts'
import { umPerUnit } from './um-per-unit.ts'

export const surveySetUpFields = [
  'characteristic',
  'condition',
  'place',
  'turned',
  'surface',
  'contact',
  'leverAngleDeg',
  'sweptDiameterMm',
  'sealMeanDiameterMm',
  'sizeMm',
  'positionCount',
  'anglesDeg',
  'direction',
  'turnsCount',
  'closing',
  'planesMm',
  'floatHeld',
  'lockOutReference',
  'unit',
  'sagUm',
  'topAngleDeg',
  'instrumentId',
  'secondInstrumentId',
  'note',
  ...correctionFields,
] as const

/** The only kind whose reading depends on an angle. */
const leverKind = 'lever-indicator'

export const turnDirections = ['clockwise', 'counter-clockwise'] as const

export type NewSurvey = Pick<
  DialSurvey,
  'characteristic' | 'condition' | 'setUp' | 'note' | 'replacesId' | 'reason'
>

/** Reads how a survey is set up, before the first reading. */
export function parseSurveySetUp(input: Input, context: MeasuredValueContext): Parsed<NewSurvey> {
  const fields = openFields(input)
  fields.only(...surveySetUpFields)
  const before = fields.faults.length
  const characteristic = fields.choice('characteristic', surveyCharacteristics)
  const isKnown = fields.faults.length === before
  const condition = fields.choice('condition', readingConditions)
  const setUp = readSurveySetUp(fields, input, { context, characteristic, isKnown })
  if (isKnown && setUp.place === 'machine' && setUp.lockOutReference === '') {
    fields.fault('lockOutReference', 'empty')
  }
  return fields.finish({
    characteristic,
    condition,
    setUp,
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

type Asked = {
  readonly context: MeasuredValueContext
  readonly characteristic: SurveyCharacteristic
  /** False where its field is faulty: the rest is looked at all the same. */
  readonly isKnown: boolean
}

/** Reads the set-up alone; where nothing was entered stands what is usual. */
export function readSurveySetUp(fields: Fields, input: Input, asked: Asked): SurveySetUp {
  const { characteristic, context } = asked
  const kind = surveyKindOf[characteristic]
  const isTurn = kind !== 'two-ends'
  const b = surveyBounds
  const first = instrumentOf(fields, 'instrumentId', context)
  const second =
    kind === 'face' && fields.isGiven('secondInstrumentId')
      ? instrumentOf(fields, 'secondInstrumentId', context)
      : undefined
  if (second !== undefined && second.id === first?.id) fields.fault('secondInstrumentId', 'taken')
  const unit = fields.optionalChoice('unit', lengthUnits) ?? 'um'
  const unread = [first, second].find((one) => one !== undefined && umPerUnit(unit, one) === null)
  if (unread !== undefined) fields.fault('unit', 'no-graduation', { number: unread.number })
  const turned = fields.optionalChoice('turned', turnedParts) ?? 'part'
  const sagUm = isTurn ? fields.optionalDecimal('sagUm', b.sagUm) : null
  if (sagUm !== null && turned === 'part') fields.fault('sagUm', 'not-carried')
  const leverAngleDeg = fields.optionalDecimal('leverAngleDeg', b.leverAngleDeg)
  if (leverAngleDeg !== null) {
    const without = [first, second].find((one) => one !== undefined && one.kind !== leverKind)
    if (without !== undefined) fields.fault('leverAngleDeg', 'no-lever', { number: without.number })
  }
  return {
    place: fields.optionalChoice('place', surveyPlaces) ?? 'machine',
    turned,
    surface: surfaceOf(fields, characteristic, kind),
    contact: fields.optionalChoice('contact', contactPoints),
    leverAngleDeg,
    sweptDiameterMm: diameterOf(fields, 'sweptDiameterMm', kind === 'face'),
    sealMeanDiameterMm: diameterOf(fields, 'sealMeanDiameterMm', false),
    sizeMm: diameterOf(fields, 'sizeMm', false),
    anglesDeg: isTurn ? anglesOf(fields, input) : [],
    isClockwise:
      (fields.optionalChoice('direction', turnDirections) ?? 'clockwise') === 'clockwise',
    turnsCount: fields.optionalWhole('turnsCount', b.turnsCount) ?? 1,
    isClosed: isTurn && isYes(input.closing),
    planesMm: kind === 'planes' ? planesOf(fields, input) : [],
    floatHeld: fields.optionalChoice('floatHeld', floatHolds) ?? 'not-held',
    lockOutReference: fields.optionalText('lockOutReference', b.lockOutLength),
    unit,
    sagUm,
    topAngleDeg: sagUm === null ? null : (fields.optionalDecimal('topAngleDeg', b.angleDeg) ?? 0),
    instrumentId: first?.id ?? 0,
    secondInstrumentId: second?.id ?? null,
  }
}

function instrumentOf(fields: Fields, name: string, context: MeasuredValueContext) {
  const { instruments, exceptions, today: day } = context
  const id = fields.typed(name).trim()
  const named = instruments.find((one: Instrument) => String(one.id) === id)
  const kind = fittingKinds.dial.find((one) => one === named?.kind) ?? 'dial-indicator'
  return parseInstrumentId(fields, name, { kind, instruments, exceptions, day, recordedOn: day })
}

/** A register is swept outside or inside; the others can only be swept one way. */
function surfaceOf(fields: Fields, characteristic: SurveyCharacteristic, kind: SurveyKind) {
  if (characteristic === 'register-concentricity') {
    return fields.optionalChoice('surface', registerSides) ?? 'inside'
  }
  return kind === 'face' ? 'face' : 'outside'
}

function diameterOf(fields: Fields, name: string, isAsked: boolean): number | null {
  const { diameterMm } = surveyBounds
  return isAsked ? fields.decimal(name, diameterMm) : fields.optionalDecimal(name, diameterMm)
}

/** Stated one by one, or so many even ones from 0: eight where nothing was entered. */
function anglesOf(fields: Fields, input: Input): readonly number[] {
  const { positionCount: count, angleDeg: value } = surveyBounds
  const stated = parseNumberList(fields, input, { name: 'anglesDeg', count, value })
  if (stated.length > 0) {
    if (!fields.faults.some((one) => one.field === 'anglesDeg')) {
      checkPositions(fields, 'anglesDeg', stated)
    }
    return stated
  }
  const even = fields.optionalWhole('positionCount', count) ?? 8
  const safe = even >= count.min && even <= count.max ? even : 8
  return Array.from({ length: safe }, (_, i) => (360 * i) / safe)
}

function planesOf(fields: Fields, input: Input): readonly number[] {
  const { planeCount: count, planeMm: value } = surveyBounds
  const planes = parseNumberList(fields, input, { name: 'planesMm', count, value })
  if (planes.length === 0 && !fields.faults.some((one) => one.field === 'planesMm')) {
    fields.fault('planesMm', 'empty')
  }
  return planes
}

function isYes(value: unknown): boolean {
  return value === true || value === 'yes'
}
