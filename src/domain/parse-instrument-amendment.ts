import { calibrationUnit } from './calibration-unit.ts'
import { type Input, openFields } from './fields.ts'
import type { Calibration, Instrument } from './instrument.ts'
import { amendedNames, type InstrumentNumbers } from './instrument-amendment.ts'
import { flatToleranceBoundsUm, instrumentTextLength } from './parse-instrument.ts'
import { parseInstrumentNumbers } from './parse-instrument-numbers.ts'
import type { Parsed } from './parsed.ts'

export const amendReasonLength = { min: 10, max: 400 } as const

export const amendmentFields = [...amendedNames, 'amendReason'] as const

export type ParsedAmendment = InstrumentNumbers & { readonly reason: string }

/**
 * Reads what is known of an instrument from now on, all of it anew. Its unit stands once a
 * calibration states a number: that number is in this unit.
 */
export function parseInstrumentAmendment(
  input: Input,
  instrument: Instrument,
): Parsed<ParsedAmendment> {
  const fields = openFields(input)
  fields.only(...amendmentFields)
  const isFlat = instrument.kind === 'optical-flat'
  if (!isFlat && fields.isGiven('flatToleranceUm')) fields.fault('flatToleranceUm', 'not-here')
  const numbers: InstrumentNumbers = {
    flatToleranceUm: isFlat ? fields.decimal('flatToleranceUm', flatToleranceBoundsUm) : null,
    range: fields.optionalText('range', instrumentTextLength.range),
    resolution: fields.optionalText('resolution', instrumentTextLength.resolution),
    ...parseInstrumentNumbers(fields, instrument.kind),
  }
  const { kind } = instrument
  const isOtherUnit = calibrationUnit({ kind, ...numbers }) !== calibrationUnit(instrument)
  if (isOtherUnit && instrument.calibrations.some(statesNumber)) {
    fields.fault('unit', 'unit-in-use')
  }
  const reason = fields.text('amendReason', amendReasonLength.max)
  if (reason !== '' && reason.length < amendReasonLength.min) {
    fields.fault('amendReason', 'too-short', amendReasonLength)
  }
  return fields.finish({ ...numbers, reason })
}

function statesNumber(one: Calibration): boolean {
  return [one.asFoundError, one.asLeftError, one.expandedUncertainty].some((of) => of !== null)
}
