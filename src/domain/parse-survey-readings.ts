import { checkLabel } from './check-label.ts'
import { checkRange } from './check-range.ts'
import { type DialSurvey, type SurveySpot, surveyBounds } from './dial-survey.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import type { MeasuredValueContext } from './parse-measured-value.ts'
import type { Parsed } from './parsed.ts'
import { surveySpots } from './survey-spots.ts'
import { umPerUnit } from './um-per-unit.ts'

/** A reading as it comes in, before the store gives it a number, a name and a time. */
export type NewSurveyReading = SurveySpot & { readonly um: number; readonly typed: string }

export const surveyReadingFields = [
  'planeIndex',
  'turnIndex',
  'positionIndex',
  'indicator',
  'value',
] as const

const index = { min: 0, max: 10_000 } as const

/**
 * Reads one reading of a survey, in its unit; its spot must be one that the survey asks for. What
 * held when the survey was begun is asked again of the indicator: it may be days ago.
 */
export function parseSurveyReading(
  input: Input,
  survey: Pick<DialSurvey, 'setUp' | 'characteristic'>,
  context: MeasuredValueContext,
): Parsed<NewSurveyReading> {
  const fields = openFields(input)
  fields.only(...surveyReadingFields)
  const spot = {
    planeIndex: fields.whole('planeIndex', index),
    turnIndex: fields.whole('turnIndex', index),
    positionIndex: fields.whole('positionIndex', index),
    indicator: fields.choice('indicator', ['first', 'second'] as const),
  }
  if (fields.faults.length === 0 && !isAskedFor(spot, survey)) fields.fault('value', 'no-such-spot')
  const um = readUm(fields, spot, { survey, context })
  return fields.finish({ ...spot, um, typed: fields.typed('value').trim() })
}

function isAskedFor(
  spot: SurveySpot,
  survey: Pick<DialSurvey, 'setUp' | 'characteristic'>,
): boolean {
  return surveySpots(survey.setUp, survey.characteristic).some(
    (one) =>
      one.planeIndex === spot.planeIndex &&
      one.turnIndex === spot.turnIndex &&
      one.positionIndex === spot.positionIndex &&
      one.indicator === spot.indicator,
  )
}

function readUm(
  fields: Fields,
  spot: SurveySpot,
  of: {
    readonly survey: Pick<DialSurvey, 'setUp'>
    readonly context: MeasuredValueContext
  },
): number {
  const { instruments, exceptions, today: day } = of.context
  const { setUp } = of.survey
  const id = spot.indicator === 'first' ? setUp.instrumentId : setUp.secondInstrumentId
  const instrument = instruments.find((one) => one.id === id)
  const known = umPerUnit(setUp.unit, instrument)
  if (known === null) fields.fault('value', 'no-graduation', { number: instrument?.number ?? '' })
  const factor = known ?? 1
  const { min, max } = surveyBounds.readingUm
  const inUnit = (um: number) => Number((um / factor).toPrecision(6))
  const value = fields.decimal('value', { min: inUnit(min), max: inUnit(max) })
  const um = value * factor
  if (fields.faults.length === 0 && instrument !== undefined) {
    const use = { instrument, day, recordedOn: day, exceptions }
    checkLabel(fields, 'value', use)
    // A needle may stand left of its zero: its range is what it can travel.
    const readings = { base: 'um', ways: [[Math.abs(um)]] } as const
    checkRange(fields, 'value', { ...use, readings })
  }
  return um
}
