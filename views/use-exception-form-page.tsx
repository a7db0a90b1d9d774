import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { InstrumentStanding } from '../src/domain/instrument-standing.ts'
import type { useExceptionFields } from '../src/domain/parse-use-exception.ts'
import { useFaults } from '../src/domain/use-exception.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { SelectField } from './components/select-field.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { exceptionSentences } from './words/en/exceptions.ts'
import { words } from './words/en.ts'

export type UseExceptionForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly standings: readonly InstrumentStanding[]
  readonly typed: Readonly<Record<(typeof useExceptionFields)[number], string>>
  readonly faults: readonly Fault[]
  readonly formKey: string
}

/** Asks an inspector to allow an instrument for one order in spite of what stands against it. */
export const UseExceptionFormPage: FC<{ frame: Frame; form: UseExceptionForm }> = (props) => {
  const { frame, form } = props
  const { exceptions: w, chrome, trade } = words
  const { typed, faults, orderNumber } = form
  const own = (field: string) => ownErrorOf(faults, field, exceptionSentences)
  return (
    <Page frame={frame} title={`${w.title} ${orderNumber}`}>
      <PageHead title={w.title} over={`${orderNumber} · ${form.sealSerial}`} lead={w.lead} />
      <form method="post" action={`/work-orders/${orderNumber}/exceptions`} class="stack-loose">
        <input type="hidden" name="formKey" value={form.formKey} />
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={faults.map((one) => ({
            fieldId: one.field === 'fault' ? 'fault-1' : one.field,
            message: ownSentence(one, exceptionSentences),
          }))}
        />
        <Caution sign={chrome.caution} title={w.cautionTitle}>
          <p>{w.caution}</p>
        </Caution>
        <SelectField
          name="instrumentId"
          label={w.instrument}
          emptyLabel={w.choose}
          value={typed.instrumentId}
          options={form.standings.map(({ instrument, use }) => ({
            value: String(instrument.id),
            label: w.option(use.number, use.name, trade.calibrationStatus[use.status]),
          }))}
          isRequired
          {...own('instrumentId')}
        />
        <ChoiceCards
          name="fault"
          legend={w.fault}
          value={typed.fault}
          choices={useFaults.map((value) => ({ value, label: w.faults[value] }))}
          {...own('fault')}
        />
        <TextAreaField
          name="reason"
          label={w.reason}
          hint={w.reasonHint}
          value={typed.reason}
          isRequired
          {...own('reason')}
        />
        <ButtonRow>
          <Button label={w.submit} kind="main" size="large" />
        </ButtonRow>
      </form>
    </Page>
  )
}
