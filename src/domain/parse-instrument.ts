import { lampIds } from '../science/optics/lamps.ts'
import { type Fields, type Input, openFields } from './fields.ts'
import { instrumentKinds, type NewInstrument } from './instrument.ts'
import { parseInstrumentNumbers } from './parse-instrument-numbers.ts'
import type { Parsed } from './parsed.ts'

export const instrumentFields = [
  'kind',
  'number',
  'name',
  'serial',
  'lampId',
  'flatToleranceUm',
  'range',
  'resolution',
  'unit',
  'rangeFrom',
  'rangeTo',
  'resolutionStep',
  'largestError',
] as const

export const instrumentTextLength = {
  number: 40,
  name: 120,
  serial: 80,
  range: 80,
  resolution: 80,
} as const

/** From the best reference flat to one that is no longer worth the name. */
export const flatToleranceBoundsUm = { min: 0.005, max: 5 } as const

/** Reads a new instrument: a lamp is one of the lamp table, a flat states its own tolerance. */
export function parseInstrument(input: Input): Parsed<NewInstrument> {
  const fields = openFields(input)
  fields.only(...instrumentFields)
  const length = instrumentTextLength
  return fields.finish({
    kind: fields.choice('kind', instrumentKinds),
    number: fields.text('number', length.number),
    name: fields.text('name', length.name),
    serial: fields.optionalText('serial', length.serial),
    lampId: onlyOf(fields, input.kind === 'lamp', 'lampId', () => fields.choice('lampId', lampIds)),
    flatToleranceUm: onlyOf(fields, input.kind === 'optical-flat', 'flatToleranceUm', () =>
      fields.decimal('flatToleranceUm', flatToleranceBoundsUm),
    ),
    range: fields.optionalText('range', length.range),
    resolution: fields.optionalText('resolution', length.resolution),
    ...parseInstrumentNumbers(fields, input.kind),
  })
}

/** A field of one kind of instrument: needed there, refused elsewhere. */
function onlyOf<T>(fields: Fields, isThatKind: boolean, name: string, read: () => T): T | null {
  if (isThatKind) return read()
  if (fields.isGiven(name)) fields.fault(name, 'not-here')
  return null
}
