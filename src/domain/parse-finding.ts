import { type Fields, type Input, openFields } from './fields.ts'
import {
  findingBounds,
  findingTerms,
  type NewFinding,
  radialPlaces,
  severities,
  suspectedCauses,
} from './finding.ts'
import { correctionFields, parseCorrection } from './parse-correction.ts'
import type { Parsed } from './parsed.ts'
import { stripParts } from './strip-part.ts'
import { termParts, termsOf } from './term-parts.ts'

export const findingFields = [
  'part',
  'term',
  'severity',
  'fromHour',
  'toHour',
  'radialPlace',
  'isBeforeCleaning',
  'observation',
  'suspectedCause',
  'causeNote',
  ...correctionFields,
] as const

export type ParsedFinding = Omit<NewFinding, 'workOrderId' | 'photoSha256'>

/** Reads what was seen on a part, and apart from it why it may have come about. */
export function parseFinding(input: Input): Parsed<ParsedFinding> {
  const fields = openFields(input)
  fields.only(...findingFields)
  const before = fields.faults.length
  const part = fields.choice('part', stripParts)
  const term = fields.choice('term', findingTerms)
  const isKnown = fields.faults.length === before
  if (isKnown && !termParts[term].includes(part)) {
    fields.fault('term', 'not-a-choice', { choices: termsOf(part).join(', ') })
  }
  const isNothing = isKnown && term === 'nothing-found'
  const { textLength } = findingBounds
  return fields.finish({
    part,
    term,
    severity: isNothing ? null : severityOf(fields),
    ...placeOf(fields),
    radialPlace: fields.optionalChoice('radialPlace', radialPlaces),
    isBeforeCleaning: isYes(fields, input.isBeforeCleaning),
    observation: fields.optionalText('observation', textLength),
    suspectedCause: fields.optionalChoice('suspectedCause', suspectedCauses) ?? 'not-said',
    causeNote: fields.optionalText('causeNote', textLength),
    ...parseCorrection(fields),
  })
}

function severityOf(fields: Fields) {
  return fields.choice('severity', severities)
}

/** One hour says nothing without the other; from 10 to 2 runs over 12. */
function placeOf(fields: Fields): Pick<NewFinding, 'fromHour' | 'toHour'> {
  const fromHour = fields.optionalDecimal('fromHour', findingBounds.hour)
  const toHour = fields.optionalDecimal('toHour', findingBounds.hour)
  if (fromHour !== null && toHour === null && !fields.isGiven('toHour')) {
    fields.fault('toHour', 'empty')
  }
  if (toHour !== null && fromHour === null && !fields.isGiven('fromHour')) {
    fields.fault('fromHour', 'empty')
  }
  return { fromHour, toHour }
}

/** Before cleaning is the rule: cleaning takes the evidence away. */
function isYes(fields: Fields, value: unknown): boolean {
  if (value === undefined || value === null || value === '') return true
  if (value === true || value === 'yes') return true
  if (value === false || value === 'no') return false
  fields.fault('isBeforeCleaning', 'not-a-choice', { choices: 'true, false' })
  return true
}
