import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { Button } from './components/button.tsx'
import { Caution } from './components/caution.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Field } from './components/field.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { errorOf } from './error-of.ts'
import { faultSentence } from './words/en/faults.ts'
import { words } from './words/en.ts'

const w = words.inspection

/** What is drawn into the form of a decision, and what comes back into it. */
export type DecisionFormState = {
  readonly formKey: string
  readonly fingerprint: string
  readonly outcome: string
  readonly reason: string
  readonly faults: readonly Fault[]
  /** Sentences that no field's fault has: a rule, or to wait before the next try. */
  readonly more: readonly { readonly field: string; readonly sentence: string }[]
}

/** Release or refuse, in the inspector's words, signed by password. */
export const DecisionForm: FC<{
  number: string
  state: DecisionFormState
  canRelease: boolean
  /** Numbers of instruments that were out of calibration on the day of use. */
  outOfCalibration: readonly string[]
}> = ({ number, state, canRelease, outOfCalibration }) => (
  <form method="post" action={`/work-orders/${number}/decision#decision`} class="stack">
    <ErrorSummary title={w.notSigned} faults={summary(state)} />
    <input type="hidden" name="formKey" value={state.formKey} />
    <input type="hidden" name="fingerprint" value={state.fingerprint} />
    {outOfCalibration.length === 0 ? null : (
      <Caution sign={words.chrome.caution} title={w.outOfCalibration}>
        <p>{w.outOfCalibrationText(outOfCalibration.join(', '))}</p>
      </Caution>
    )}
    <ChoiceCards
      name="outcome"
      legend={w.outcome}
      value={state.outcome}
      choices={[
        ...(canRelease ? [{ value: 'release', label: w.release, detail: w.releaseDetail }] : []),
        { value: 'refuse', label: w.refuse, detail: w.refuseDetail },
      ]}
      {...choiceError(state)}
    />
    <TextAreaField
      name="reason"
      label={w.reason}
      hint={w.reasonHint}
      value={state.reason}
      {...errorIn(state, 'reason')}
    />
    <Field
      name="password"
      label={w.password}
      hint={w.passwordHint}
      type="password"
      autocomplete="current-password"
      isRequired
      {...errorIn(state, 'password')}
    />
    <Button label={w.sign} kind="main" size="large" />
  </form>
)

function errorIn(state: DecisionFormState, field: string): { error?: string } {
  const more = state.more.find((one) => one.field === field)
  return more === undefined ? errorOf(state.faults, field) : { error: more.sentence }
}

function choiceError(state: DecisionFormState): { error?: string } {
  const isFaulty = state.faults.some((one) => one.field === 'outcome')
  return isFaulty ? { error: w.choose } : {}
}

function summary(state: DecisionFormState) {
  const faults = state.faults.map((one) => ({
    fieldId: one.field === 'outcome' ? 'outcome-1' : one.field,
    message: one.field === 'outcome' ? w.choose : faultSentence(one),
  }))
  const more = state.more.map((one) => ({ fieldId: one.field, message: one.sentence }))
  return [...faults, ...more]
}
