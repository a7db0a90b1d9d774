import type { FC } from 'hono/jsx'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { TextAreaField } from '../components/text-area-field.tsx'
import { ownErrorOf } from '../own-error-of.ts'
import { instrumentSentences } from '../words/en/instruments.ts'
import { words } from '../words/en.ts'
import type { InstrumentForms } from './forms.ts'

/** Takes an instrument out of use; folded away, since it can't be taken back. */
export const WithdrawalForm: FC<InstrumentForms> = ({ instrument, formKey, typed, faults }) => {
  const w = words.instruments
  return (
    <details class="fold" open={faults.some((one) => one.field === 'reason')}>
      <summary>{w.withdraw}</summary>
      <form method="post" action={`/instruments/${instrument.id}/withdrawal`} class="fold-body">
        <input type="hidden" name="formKey" value={`${formKey}-withdrawal`} />
        <TextAreaField
          name="reason"
          label={w.withdrawReason}
          hint={w.withdrawHint}
          value={typed.reason}
          isRequired
          {...ownErrorOf(faults, 'reason', instrumentSentences)}
        />
        <ButtonRow>
          <Button label={w.submitWithdrawal} kind="stop" />
        </ButtonRow>
      </form>
    </details>
  )
}
