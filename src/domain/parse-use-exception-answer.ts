import { type Input, openFields } from './fields.ts'
import { exceptionReasonLength } from './parse-use-exception.ts'
import type { Parsed } from './parsed.ts'
import type { UseExceptionAnswer } from './use-exception.ts'

/** An exception is for the work at hand, not instead of a calibration (our own choice). */
export const exceptionDaysAtMost = 30

export const useExceptionAnswerFields = ['answer', 'validUntil', 'reason'] as const

export type ParsedUseExceptionAnswer = Pick<UseExceptionAnswer, 'answer' | 'validUntil' | 'reason'>

/**
 * Reads an inspector's answer: allowed until a day, today at the earliest, or declined without one.
 * @param today calendar day, `2026-11-25`
 */
export function parseUseExceptionAnswer(
  input: Input,
  today: string,
): Parsed<ParsedUseExceptionAnswer> {
  const fields = openFields(input)
  fields.only(...useExceptionAnswerFields)
  const answer = fields.choice('answer', ['allowed', 'declined'] as const)
  const { min, max } = exceptionReasonLength
  const reason = fields.text('reason', max)
  if (reason !== '' && reason.length < min) fields.fault('reason', 'too-short', { min })
  // A day left standing in the form of a refusal says nothing.
  if (answer === 'declined') return fields.finish({ answer, validUntil: null, reason })
  const before = fields.faults.length
  const validUntil = fields.day('validUntil')
  if (fields.faults.length > before) return fields.finish({ answer, validUntil, reason })
  const bounds = { min: today, max: lastDayFrom(today) }
  if (validUntil < bounds.min) fields.fault('validUntil', 'below', bounds)
  else if (validUntil > bounds.max) fields.fault('validUntil', 'above', bounds)
  return fields.finish({ answer, validUntil, reason })
}

/** The last day that can be allowed: calendar days have no clock, so they count in UTC. */
export function lastDayFrom(today: string): string {
  const endMs = Date.parse(`${today}T00:00:00Z`) + exceptionDaysAtMost * 86_400_000
  return new Date(endMs).toISOString().slice(0, 10)
}
