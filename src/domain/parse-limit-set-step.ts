import { type Fields, type Input, openFields } from './fields.ts'
import type { LimitSetStep } from './limit-set.ts'
import type { Parsed } from './parsed.ts'

export const stepReasonLength = { min: 3, max: 400 } as const

export type ParsedStep = Pick<LimitSetStep, 'effectiveOn' | 'reason'>

/** Reads an approval: in force from today, unless a later day is given. */
export function parseApproval(input: Input, today: string): Parsed<ParsedStep> {
  const fields = openFields(input)
  fields.only('inForceFrom')
  return fields.finish({ effectiveOn: dayFrom(fields, 'inForceFrom', today), reason: '' })
}

/** Reads a retirement: why, and from which day on the set is no longer offered. */
export function parseRetirement(input: Input, today: string): Parsed<ParsedStep> {
  const fields = openFields(input)
  fields.only('retiredFrom', 'reason')
  const { min, max } = stepReasonLength
  const reason = fields.text('reason', max)
  if (reason !== '' && reason.length < min) fields.fault('reason', 'too-short', { min })
  return fields.finish({ effectiveOn: dayFrom(fields, 'retiredFrom', today), reason })
}

/** Nothing comes into force or ends in the past: orders were received meanwhile. */
function dayFrom(fields: Fields, name: string, today: string): string {
  const before = fields.faults.length
  const day = fields.optionalDay(name) ?? today
  if (fields.faults.length === before && day < today) fields.fault(name, 'not-later')
  return day
}
