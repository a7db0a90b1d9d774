import { distinctAngles } from '../science/runout/distinct-angles.ts'
import { totalIndicatorReadingUm } from '../science/runout/total-indicator-reading-um.ts'
import { surveyCharacteristics } from './characteristic.ts'
import { checkRange } from './check-range.ts'
import { type SurveySpot, surveyBounds, surveyKindOf } from './dial-survey.ts'
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
  const setUp = readSurveySetUp(fields, input, { context, characteristic, isKnown: true })
  checkTravel(fields, context, { id: setUp.instrumentId, turns })
  return fields.finish({
    survey: {
      characteristic,
      condition,
      setUp: {
        ...setUp,
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

type Turns = {
  readonly anglesDeg: readonly number[]
  readonly turnsCount: number
  readonly isClosed: boolean
  readonly readings: readonly NewSurveyReading[]
}

const turned = (deg: number) => ((deg % 360) + 360) % 360
const isSame = (a: number, b: number) => distinctAngles([a, b]).length === 1

/** Splits readings into turns: each begins where the first angle comes again. */
function parseTurns(fields: Fields): Turns {
  const none: Turns = { anglesDeg: [], turnsCount: 1, isClosed: false, readings: [] }
  const before = fields.faults.length
  const most = { min: 3, max: surveyBounds.positionCount.max * surveyBounds.turnsCount.max }
  const points = fields.list('readings', most).map((part) => {
    part.only('angleDeg', 'valueUm')
    const angleDeg = part.decimal('angleDeg', dialPointBounds.angleDeg)
    const valueUm = part.decimal('valueUm', surveyBounds.readingUm)
    return { angleDeg, valueUm, typed: part.typed('valueUm') }
  })
  if (fields.faults.length > before || points.length === 0) return none
  const first = points[0]?.angleDeg ?? 0
  const isClosed = points.length > 3 && isSame(points.at(-1)?.angleDeg ?? 0, first)
  const again = points.findIndex((one, i) => i > 0 && isSame(one.angleDeg, first))
  const count = again === -1 ? points.length : again
  const anglesDeg = points.slice(0, count).map((one) => turned(one.angleDeg))
  // Closed turns hand their closing reading on as the first of the next: only the last is one.
  const body = isClosed ? points.slice(0, -1) : points
  const turnsCount = body.length / count
  const isWhole =
    Number.isInteger(turnsCount) &&
    body.every((one, i) => isSame(one.angleDeg, anglesDeg[i % count] ?? 0))
  const { positionCount, turnsCount: turnBounds } = surveyBounds
  if (distinctAngles(anglesDeg).length < count || !isWhole || turnsCount > turnBounds.max) {
    fields.fault('readings', 'no-whole-turns')
  } else if (count < positionCount.min) {
    fields.fault('readings', 'too-few-positions', positionCount)
  } else if (count > positionCount.max) {
    fields.fault('readings', 'too-many-numbers', positionCount)
  }
  const isOneTurnClosed = isClosed && turnsCount === 1
  const kept = isOneTurnClosed ? points : body
  return {
    anglesDeg,
    turnsCount: Math.max(1, Math.floor(turnsCount)),
    isClosed: isOneTurnClosed,
    readings: kept.map(({ valueUm, typed }, i) => ({
      ...spotAt(i, isOneTurnClosed ? count + 1 : count),
      um: valueUm,
      typed: typed.trim(),
    })),
  }
}

function spotAt(index: number, perTurn: number): SurveySpot {
  return {
    planeIndex: 0,
    turnIndex: Math.floor(index / perTurn),
    positionIndex: index % perTurn,
    indicator: 'first',
  }
}
