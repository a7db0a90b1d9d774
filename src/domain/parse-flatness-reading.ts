import { checkStatedLamp } from './check-stated-lamp.ts'
import { confirmField, isConfirmed } from './confirmed.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { flatnessBounds, type NewFlatnessReading, readingConditions } from './flatness.ts'
import type { Instrument } from './instrument.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { flatnessBudgetFields, parseFlatnessBudget } from './parse-flatness-budget.ts'
import { parseFlatnessFigures } from './parse-flatness-figures.ts'
import { idBounds, parseInstrumentId } from './parse-instrument-id.ts'
import type { Parsed } from './parsed.ts'
import { type Component, faceKinds } from './seal.ts'
import { tradeWindow } from './trade-window.ts'
import type { UseException } from './use-exception.ts'

export const flatnessReadingFields = [
  'faceId',
  'condition',
  'lampInstrumentId',
  'opticalFlatInstrumentId',
  'lamp',
  'wavelengthNm',
  'pattern',
  'ringCentre',
  'unreadableCause',
  'readings',
  'viewingAngleDeg',
  'soakMin',
  'temperatureC',
  ...flatnessBudgetFields,
  'note',
  ...correctionFields,
  confirmField,
] as const

export const noteLength = { max: 1000 } as const

export type FlatnessContext = {
  /** Of the seal that the order is for. */
  readonly components: readonly Component[]
  readonly instruments: readonly Instrument[]
  /** Of the order, by which an inspector allows an instrument; none where absent. */
  readonly exceptions?: readonly UseException[]
  /** Calendar day on which it is recorded, `2026-11-25`. */
  readonly today: string
}

/**
 * Reads a light-band reading, from the form or the machine interface alike. An unreadable face is
 * a recorded outcome and needs no count; whatever was counted before giving up is kept.
 */
export function parseFlatnessReading(
  input: Input,
  context: FlatnessContext,
): Parsed<Omit<NewFlatnessReading, 'workOrderId'>> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...flatnessReadingFields)
  const { instruments, exceptions, today: day } = context
  const use = { instruments, exceptions, day, recordedOn: day }
  const componentId = parseFace(fields, context.components)
  const condition = fields.choice('condition', readingConditions)
  const lamp = parseInstrumentId(fields, 'lampInstrumentId', { kind: 'lamp', ...use })
  const asked = { kind: 'optical-flat', ...use } as const
  const flat = parseInstrumentId(fields, 'opticalFlatInstrumentId', asked)
  checkStatedLamp(fields, lamp)
  return fields.finish({
    componentId,
    condition,
    lampInstrumentId: lamp?.id ?? 0,
    flatInstrumentId: flat?.id ?? 0,
    ...parseFlatnessFigures(fields),
    soakMin: fields.optionalDecimal('soakMin', flatnessBounds.soakMin),
    temperatureC: fields.optionalWindowed(
      'temperatureC',
      tradeWindow.temperatureC,
      flatnessBounds.temperatureC,
    ),
    budgetInput: parseFlatnessBudget(fields, input),
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

/** The face that `faceId` names; a fault where it is none of the seal. */
export function parseFace(fields: Fields, components: readonly Component[]): number {
  const before = fields.faults.length
  const id = fields.whole('faceId', idBounds)
  if (fields.faults.length > before) return id
  const component = components.find((one) => one.id === id)
  const isFace = faceKinds.some((kind) => kind === component?.kind)
  if (!isFace) fields.fault('faceId', 'not-known')
  return id
}
