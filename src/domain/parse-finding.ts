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
  'isPhotoTakenOut',
  ...correctionFields,
] as const

export type ParsedFinding = Omit<NewFinding, 'workOrderId' | 'photoSha256'> & {
  /** Of a correction: the photograph of the finding before doesn't go on with it. */
  readonly isPhotoTakenOut: boolean
}

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
    ...(isNothing ? nothingOf(fields, input) : somethingOf(fields)),
    // Before cleaning is the rule: cleaning takes the evidence away.
    isBeforeCleaning: isYes(fields, input, { name: 'isBeforeCleaning', unsaid: true }),
    observation: fields.optionalText('observation', textLength),
    suspectedCause: fields.optionalChoice('suspectedCause', suspectedCauses) ?? 'not-said',
    causeNote: fields.optionalText('causeNote', textLength),
    ...parsePhotoTakenOut(fields, input),
  })
}

type Extent = Pick<NewFinding, 'severity' | 'fromHour' | 'toHour' | 'radialPlace'>

function somethingOf(fields: Fields): Extent {
  return {
    severity: fields.choice('severity', severities),
    ...placeOf(fields),
    radialPlace: fields.optionalChoice('radialPlace', radialPlaces),
  }
}

/** Of nothing there is neither more nor less, and it lies nowhere: who says so meant another word. */
function nothingOf(fields: Fields, input: Input): Extent {
  for (const name of ['severity', 'fromHour', 'toHour', 'radialPlace']) {
    const isAbsent = [undefined, null, ''].some((none) => none === input[name])
    if (!isAbsent) fields.fault(name, 'not-of-nothing')
  }
  return { severity: null, fromHour: null, toHour: null, radialPlace: null }
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

/** What was never there can't be taken out. */
function parsePhotoTakenOut(fields: Fields, input: Input) {
  const correction = parseCorrection(fields)
  const isPhotoTakenOut = isYes(fields, input, { name: 'isPhotoTakenOut', unsaid: false })
  if (isPhotoTakenOut && !fields.isGiven('replacesId')) fields.fault('isPhotoTakenOut', 'not-here')
  return { ...correction, isPhotoTakenOut }
}

/** A word of a form or a truth of a program; `unsaid` where nothing is said. */
function isYes(
  fields: Fields,
  input: Input,
  { name, unsaid }: { readonly name: string; readonly unsaid: boolean },
): boolean {
  const value = input[name]
  if (value === undefined || value === null || value === '') return unsaid
  if (value === true || value === 'yes') return true
  if (value === false || value === 'no') return false
  fields.fault(name, 'not-a-choice', { choices: 'true, false' })
  return unsaid
}
