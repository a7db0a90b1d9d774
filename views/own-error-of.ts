import type { Fault } from '../src/domain/fault.ts'
import { faultSentence } from './words/en/faults.ts'

/** Sentences of one form by `field kind`, better than the general one of that kind. */
export type OwnSentences = Readonly<Record<string, string>>

/**
 * The sentence for a fault: the form's own where it has one. A field in a list (`readings[1].bands`)
 * is looked up by its last name.
 */
export function ownSentence(fault: Fault, own: OwnSentences): string {
  const name = fault.field.split('.').at(-1) ?? fault.field
  return own[`${name} ${fault.kind}`] ?? faultSentence(fault)
}

/** The `error` prop of a field, like `errorOf`, with the form's own sentences. */
export function ownErrorOf(
  faults: readonly Fault[],
  field: string,
  own: OwnSentences,
): { error?: string } {
  const fault = faults.find((one) => one.field === field)
  return fault === undefined ? {} : { error: ownSentence(fault, own) }
}
