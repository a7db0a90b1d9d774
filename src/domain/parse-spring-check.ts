import { confirmField, isConfirmed } from './confirmed.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { readingConditions } from './flatness.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import { parseLengthInstrument } from './parse-length-instrument.ts'
import type { Parsed } from './parsed.ts'
import { springBounds } from './spring-bounds.ts'
import { type NewSpringCheck, springCheckBounds } from './spring-check.ts'
import { springOf } from './spring-of.ts'
import type { StripContext } from './strip-context.ts'
import { optionalTypedMm, typedMm } from './typed-mm.ts'

export const springCheckFields = [
  'condition',
  'springsCount',
  'freeLengthMm',
  'newLengthMm',
  'loads',
  'rateNPerMm',
  'workingLengthMm',
  'solidLengthMm',
  'instrumentId',
  'note',
  ...correctionFields,
  confirmField,
] as const

/** Reads a spring of the bench, from the form or the machine interface alike. */
export function parseSpringCheck(
  input: Input,
  context: StripContext,
): Parsed<Omit<NewSpringCheck, 'workOrderId'>> {
  const fields = openFields(input, isConfirmed(input))
  fields.only(...springCheckFields)
  const condition = fields.choice('condition', readingConditions)
  const figures = parseSpringFigures(fields)
  const { freeLength, workingLength } = figures
  return fields.finish({
    condition,
    ...figures,
    instrumentId: parseLengthInstrument(fields, [freeLength, workingLength], context),
    note: fields.optionalText('note', noteLength.max),
    ...parseCorrection(fields),
  })
}

/** The part of it that the load depends on. Faults are collected in `fields`. */
export function parseSpringFigures(fields: Fields) {
  const b = springBounds
  const figures = {
    springsCount: fields.optionalWhole('springsCount', b.springsCount) ?? 1,
    freeLength: typedMm(fields, 'freeLengthMm', b.lengthMm),
    newLength: optionalTypedMm(fields, 'newLengthMm', b.lengthMm),
    loads: parseLoads(fields),
    statedRateNPerMm: fields.optionalDecimal('rateNPerMm', b.rateNPerMm),
    workingLength: typedMm(fields, 'workingLengthMm', b.lengthMm),
    solidLength: optionalTypedMm(fields, 'solidLengthMm', b.lengthMm),
  }
  requireSense(fields, figures)
  return figures
}

function parseLoads(fields: Fields): NewSpringCheck['loads'] {
  return fields.list('loads', springCheckBounds.loadCount).map((part) => {
    part.only('lengthMm', 'loadN')
    const length = typedMm(part, 'lengthMm', springBounds.lengthMm)
    const n = part.decimal('loadN', springBounds.loadN)
    return { length, load: { n, typed: part.typed('loadN').trim() } }
  })
}

/** Solid is at most working, working at most free; loads rise; a rate is stated or comes of loads. */
function requireSense(
  fields: Fields,
  figures: Omit<
    NewSpringCheck,
    'workOrderId' | 'condition' | 'instrumentId' | 'note' | 'replacesId' | 'reason'
  >,
): void {
  const { freeLength, workingLength, solidLength, loads, statedRateNPerMm } = figures
  if (loads.length > 0 && statedRateNPerMm !== null) {
    fields.fault('rateNPerMm', 'one-of-two', { one: 'rateNPerMm', other: 'loads' })
  }
  if (fields.faults.length > 0) return
  if (workingLength.mm > freeLength.mm) {
    fields.fault('workingLengthMm', 'above', {
      min: springBounds.lengthMm.min,
      max: freeLength.mm,
    })
  }
  if (solidLength !== null && solidLength.mm > workingLength.mm) {
    fields.fault('solidLengthMm', 'above', {
      min: springBounds.lengthMm.min,
      max: workingLength.mm,
    })
  }
  if (loads.length > 0 && springOf(figures) === null) fields.fault('loads', 'load-not-rising')
}
