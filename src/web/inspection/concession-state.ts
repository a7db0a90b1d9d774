import type { ConcessionState } from '../../../views/evidence-page-props.ts'
import type { Fault } from '../../domain/fault.ts'
import type { Input } from '../../domain/fields.ts'
import { typedText } from '../typed-text.ts'

/** The forms of concessions as they are drawn: what was typed comes back into its own form. */
export function concessionState(
  formKey: string,
  refused?: { readonly input: Input; readonly faults: readonly Fault[] },
): ConcessionState {
  if (refused === undefined) return { formKey }
  const { input, faults } = refused
  return {
    formKey,
    refusedFor: ({ subjectKind, subjectId, judged }) => {
      const isIt =
        typedText(input.subjectKind) === subjectKind &&
        typedText(input.subjectId) === String(subjectId) &&
        typedText(input.characteristic) === judged.characteristic
      if (!isIt) return null
      return {
        reason: typedText(input.reason),
        customerReference: typedText(input.customerReference),
        faults,
        formKey: typedText(input.formKey),
      }
    },
  }
}
