import { characteristics } from './characteristic.ts'
import type { Concession } from './concession.ts'
import { type Input, openFields } from './fields.ts'
import { idBounds } from './parse-instrument-id.ts'
import type { Parsed } from './parsed.ts'
import { resultKinds } from './result-subject.ts'

export const concessionTextLength = {
  reason: { min: 10, max: 400 },
  customerReference: { min: 2, max: 120 },
} as const

/** What is asked for; whether it may be granted is asked of the whole record. */
export type ParsedConcession = Pick<
  Concession,
  'subjectKind' | 'subjectId' | 'characteristic' | 'reason' | 'customerReference'
>

/** Reads the form of a concession: which result, why, and where the customer agreed. */
export function parseConcession(input: Input): Parsed<ParsedConcession> {
  const fields = openFields(input)
  const text = (name: keyof typeof concessionTextLength): string => {
    const { min, max } = concessionTextLength[name]
    const value = fields.text(name, max)
    if (value !== '' && value.length < min) fields.fault(name, 'too-short', { min })
    return value
  }
  return fields.finish({
    subjectKind: fields.choice('subjectKind', resultKinds),
    subjectId: fields.whole('subjectId', idBounds),
    characteristic: fields.choice('characteristic', characteristics),
    reason: text('reason'),
    customerReference: text('customerReference'),
  })
}
