import { type Input, openFields } from './fields.ts'
import type { Parsed } from './parsed.ts'
import { acknowledgementLength } from './release-faults.ts'

export const askedOutcomes = ['release', 'refuse'] as const

/** What an inspector asks for; the password is tried elsewhere and never part of it. */
export type AskedDecision = {
  readonly outcome: (typeof askedOutcomes)[number]
  /** Why it is refused, or what is acknowledged on releasing; '' where nothing was written. */
  readonly reason: string
}

/** Reads the form of a decision: a refusal without its reason helps nobody at the bench. */
export function parseDecision(input: Input): Parsed<AskedDecision> {
  const fields = openFields(input)
  const outcome = fields.choice('outcome', askedOutcomes)
  const { max } = acknowledgementLength
  const reason =
    input.outcome === 'refuse' ? fields.text('reason', max) : fields.optionalText('reason', max)
  if (fields.typed('password') === '') fields.fault('password', 'empty')
  return fields.finish({ outcome, reason })
}
