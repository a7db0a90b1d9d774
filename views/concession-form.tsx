import type { FC } from 'hono/jsx'
import type { CountedResult } from '../src/domain/counted-results.ts'
import type { Fault } from '../src/domain/fault.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Field } from './components/field.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { errorOf } from './error-of.ts'
import { words } from './words/en.ts'

/** What was typed into the form of a concession, and what is wrong with it. */
export type ConcessionTyped = {
  readonly reason: string
  readonly customerReference: string
  readonly faults: readonly Fault[]
  readonly formKey: string
}

/** Records that the customer takes a result all the same; folded until it is wanted. */
export const ConcessionForm: FC<{
  number: string
  counted: CountedResult
  refused: ConcessionTyped | null
  formKey: string
}> = ({ number, counted, refused, formKey }) => {
  const w = words.inspection.concession
  const { subjectKind, subjectId, judged } = counted
  const key = `${subjectKind}-${subjectId}-${judged.characteristic}`
  const faults = refused?.faults ?? []
  return (
    <details class="fold" open={refused !== null}>
      <summary>{w.summary}</summary>
      <form
        method="post"
        action={`/work-orders/${number}/concessions#${key}`}
        class="fold-body stack"
      >
        <input type="hidden" name="formKey" value={refused?.formKey || `${formKey}-${key}`} />
        <input type="hidden" name="subjectKind" value={subjectKind} />
        <input type="hidden" name="subjectId" value={String(subjectId)} />
        <input type="hidden" name="characteristic" value={judged.characteristic} />
        <TextAreaField
          name="reason"
          id={`reason-${key}`}
          label={w.reason}
          hint={w.reasonHint}
          value={refused?.reason}
          isRequired
          {...errorOf(faults, 'reason')}
        />
        <Field
          name="customerReference"
          id={`reference-${key}`}
          label={w.customerReference}
          hint={w.customerReferenceHint}
          value={refused?.customerReference}
          isRequired
          {...errorOf(faults, 'customerReference')}
        />
        <ButtonRow>
          <Button label={w.submit} />
        </ButtonRow>
      </form>
    </details>
  )
}
