import { type MeasuredCharacteristic, measuredCharacteristics } from './characteristic.ts'
import { checkRange } from './check-range.ts'
import { confirmField, isConfirmed } from './confirmed.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { readingConditions } from './flatness.ts'
import type { Instrument } from './instrument.ts'
import { familyOf, fittingKinds } from './measured-family.ts'
import type { NewMeasuredValue } from './measured-value.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { idBounds, parseInstrumentId } from './parse-instrument-id.ts'
import { isOfFace, parseCharacteristic, parseMeasuredFigures } from './parse-measured-figures.ts'
import type { Parsed } from './parsed.ts'
import { type Component, faceKinds } from './seal.ts'
import type { UseException } from './use-exception.ts'
import { valueReadings } from './value-readings.ts'

export const measuredValueFields = [
  'characteristic',
  'componentId',
  'condition',
  'instrumentId',
  'unit',
  'readings',
  'sizeMm',
  'leverAngleDeg',
  'cutOffMm',
  'traceDirection',
  'tipRadiusUm',
  'evaluationLengthMm',
  'faceState',
  'temperatureHalfWidthK',
  'settingStandardUncertaintyUm',
  'note',
  ...correctionFields,
  confirmField,
] as const

export type MeasuredValueContext = {
  /** Of the seal that the order is for. */
  readonly components: readonly Component[]
  readonly instruments: readonly Instrument[]
  /** Of the order, by which an inspector allows an instrument; none where absent. */
  readonly exceptions?: readonly UseException[]
  /** Calendar day on which it is recorded, `2026-11-25`. */
  readonly today: string
}

/**
 * Reads a figure that was read with an instrument, once or several times, from the form or the
 * machine interface alike. What belongs to a face names it; what belongs to the machine names none.
 */
export function parseMeasuredValue(
  input: Input,
  context: MeasuredValueContext,
): Parsed<Omit<NewMeasuredValue, 'workOrderId'>> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...measuredValueFields)
  const characteristic = parseCharacteristic(fields)
  const componentId = parseFace(fields, context.components, characteristic)
  const condition = fields.choice('condition', readingConditions)
  const instrument = parseInstrument(fields, context, characteristic)
  const before = fields.faults.length
  const figures = parseMeasuredFigures(fields, characteristic, instrument)
  if (fields.faults.length === before) {
    const { exceptions, today: day } = context
    const readings = valueReadings(figures.readings)
    checkRange(fields, 'instrumentId', {
      instrument,
      readings,
      day,
      recordedOn: day,
      exceptions,
    })
  }
  return fields.finish({
    characteristic: characteristic ?? measuredCharacteristics[0],
    componentId,
    condition,
    instrumentId: instrument?.id ?? 0,
    ...figures,
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

/** Of a kind that fits; before it is known what was measured, of any kind that measures lengths. */
function parseInstrument(
  fields: Fields,
  { instruments, exceptions, today: day }: MeasuredValueContext,
  characteristic: MeasuredCharacteristic | null,
): Instrument | undefined {
  const kinds =
    characteristic === null
      ? Object.values(fittingKinds).flat()
      : fittingKinds[familyOf[characteristic]]
  const id = fields.typed('instrumentId').trim()
  const named = instruments.find((one) => String(one.id) === id)
  const kind = kinds.find((one) => one === named?.kind) ?? kinds[0] ?? 'dial-indicator'
  const asked = { kind, instruments, exceptions, day, recordedOn: day }
  return parseInstrumentId(fields, 'instrumentId', asked)
}

function parseFace(
  fields: Fields,
  components: readonly Component[],
  characteristic: MeasuredCharacteristic | null,
): number | null {
  if (characteristic === null) return null
  if (!isOfFace(characteristic)) {
    if (fields.isGiven('componentId')) fields.fault('componentId', 'not-here')
    return null
  }
  const before = fields.faults.length
  const id = fields.whole('componentId', idBounds)
  if (fields.faults.length > before) return null
  const kind = components.find((one) => one.id === id)?.kind
  if (!faceKinds.some((one) => one === kind)) fields.fault('componentId', 'not-known')
  return id
}
