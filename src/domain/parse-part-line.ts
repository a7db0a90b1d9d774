import { type Fields, type Input, openFields } from './fields.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import { noteLength } from './parse-flatness-reading.ts'
import type { Parsed } from './parsed.ts'
import { type NewPartLine, partFates } from './part-line.ts'
import { stripParts } from './strip-part.ts'

export const partLineFields = [
  'part',
  'description',
  'fate',
  'quantityCount',
  'batch',
  'certificate',
  'compound',
  'curedOn',
  'note',
  ...correctionFields,
] as const

export const partLineBounds = {
  quantityCount: { min: 1, max: 1000 },
  textLength: 80,
} as const

/** Reads what becomes of one part. */
export function parsePartLine(input: Input): Parsed<Omit<NewPartLine, 'workOrderId'>> {
  const fields = openFields(input)
  fields.only(...partLineFields)
  return fields.finish({ ...readPartLine(fields), ...parseCorrection(fields) })
}

/** The fields of a part, without what it replaces. What a new part is known by is of new parts. */
export function readPartLine(
  fields: Fields,
): Omit<NewPartLine, 'workOrderId' | 'replacesId' | 'reason'> {
  const { quantityCount, textLength } = partLineBounds
  const before = fields.faults.length
  const part = fields.choice('part', stripParts)
  const fate = fields.choice('fate', partFates)
  const isNew = fields.faults.length > before || fate === 'replaced'
  const ofNew = (name: string) => {
    if (isNew) return fields.optionalText(name, textLength)
    if (fields.isGiven(name)) fields.fault(name, 'not-of-old-part')
    return ''
  }
  return {
    part,
    description: fields.optionalText('description', textLength),
    fate,
    quantityCount: fields.optionalWhole('quantityCount', quantityCount) ?? 1,
    batch: ofNew('batch'),
    certificate: ofNew('certificate'),
    compound: ofNew('compound'),
    curedOn: ofNew('curedOn') === '' ? null : fields.optionalDay('curedOn'),
    note: fields.optionalText('note', noteLength.max),
  }
}
