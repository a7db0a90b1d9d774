import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { Button } from './components/button.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { limitSetSentences } from './words/en/limit-forms.ts'
import { words } from './words/en.ts'

export type LimitSetStepsProps = {
  readonly id: number
  /** `own-draft`: who looks wrote it, and another approves it. */
  readonly approval: 'none' | 'form' | 'own-draft'
  readonly mayRetire: boolean
  readonly typed: Readonly<Record<string, string>>
  readonly faults: readonly Fault[]
  /** Why the whole was refused; '' where it was not. */
  readonly refusal: string
  readonly formKeys: { readonly approval: string; readonly retirement: string }
}

/** What an inspector may do with a set: approve a draft, retire what is offered. */
export const LimitSetSteps: FC<LimitSetStepsProps> = (props) => {
  const { id, approval, mayRetire, typed, faults, formKeys } = props
  const w = words.limitSets
  const own = (field: string) => ownErrorOf(faults, field, limitSetSentences)
  return (
    <div id="steps" class="stack-loose">
      {approval === 'own-draft' ? <p class="strong">{w.ownDraft}</p> : null}
      {approval === 'form' ? (
        <form method="post" action={`/limit-sets/${id}/approval`} class="card stack">
          <input type="hidden" name="formKey" value={formKeys.approval} />
          <h2>{w.approvalTitle}</h2>
          <p>{w.approvalLead}</p>
          <Field
            name="inForceFrom"
            label={w.inForceFrom}
            hint={w.inForceHint}
            type="date"
            value={typed.inForceFrom}
            width="short"
            {...own('inForceFrom')}
          />
          <Button label={w.approve} kind="main" size="large" />
        </form>
      ) : null}
      {mayRetire ? (
        <form method="post" action={`/limit-sets/${id}/retirement`} class="card stack">
          <input type="hidden" name="formKey" value={formKeys.retirement} />
          <h2>{w.retireTitle}</h2>
          <p>{w.retireLead}</p>
          <Field name="reason" label={w.retireReason} value={typed.reason} {...own('reason')} />
          <Field
            name="retiredFrom"
            label={w.retiredFrom}
            hint={w.inForceHint}
            type="date"
            value={typed.retiredFrom}
            width="short"
            {...own('retiredFrom')}
          />
          <Button label={w.retire} kind="stop" size="large" />
        </form>
      ) : null}
    </div>
  )
}

/** Why what was asked of a set was not done, at the head of its page. */
export const LimitSetStepFaults: FC<Pick<LimitSetStepsProps, 'faults' | 'refusal'>> = (props) => {
  const { faults, refusal } = props
  return (
    <ErrorSummary
      title={words.chrome.faultsTitle}
      faults={[
        ...faults.map((one) => ({
          fieldId: one.field,
          message: ownSentence(one, limitSetSentences),
        })),
        ...(refusal === '' ? [] : [{ fieldId: 'steps', message: refusal }]),
      ]}
    />
  )
}
