import type { Fault } from '../src/domain/fault.ts'
import { type OwnSentences, ownSentence } from './own-error-of.ts'

/** Lines for the summary above a form: the field's label, then its sentence. */
export function summaryFaults(
  faults: readonly Fault[],
  labelOf: (field: string) => string | undefined,
  own: OwnSentences = {},
): { readonly fieldId: string; readonly message: string }[] {
  return faults.map((fault) => {
    const label = labelOf(fault.field)
    const sentence = ownSentence(fault, own)
    return {
      fieldId: fault.field,
      message: label === undefined ? sentence : `${label}: ${sentence}`,
    }
  })
}
