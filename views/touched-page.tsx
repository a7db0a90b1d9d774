import type { FC } from 'hono/jsx'
import { calibrationUnit } from '../src/domain/calibration-unit.ts'
import { doubtAnswers } from '../src/domain/doubt.ts'
import type { DoubtWindow } from '../src/domain/doubt-window.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { Calibration, Instrument } from '../src/domain/instrument.ts'
import type { TouchedRecord } from '../src/domain/touched-record.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ChoiceCards } from './components/choice-cards.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Facts } from './components/facts.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { numberText } from './figures/number-text.ts'
import { TouchedTable } from './instruments/touched-table.tsx'
import { ownErrorOf, ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { instrumentUnitSigns } from './words/en/instrument-range.ts'
import { touchedSentences } from './words/en/touched.ts'
import { words } from './words/en.ts'

export type TouchedPageProps = {
  readonly frame: Frame
  readonly instrument: Instrument
  readonly found: Calibration
  readonly window: DoubtWindow
  readonly touched: readonly TouchedRecord[]
  readonly isRecorded: boolean
  /** Null for who may look only. */
  readonly form: TouchedForm | null
}

export type TouchedForm = {
  readonly formKey: string
  /** The newest answer that this page shows; 0 for none. */
  readonly seenAnswerId: number
  readonly ticked: readonly string[]
  readonly typed: { readonly answer: string; readonly reason: string }
  readonly faults: readonly Fault[]
}

/** What an instrument was used for while it may have been out of tolerance. */
export const TouchedPage: FC<TouchedPageProps> = (props) => {
  const { frame, instrument, found, touched, form } = props
  const { touched: w, chrome } = words
  const title = w.title(instrument.number)
  return (
    <Page frame={frame} title={title}>
      <PageHead title={title} over={instrument.name} lead={w.lead(found.calibratedOn)} />
      <div class="stack-loose">
        {props.isRecorded ? <Notice kind="done" text={chrome.saved} /> : null}
        <ErrorSummary
          title={chrome.faultsTitle}
          faults={(form?.faults ?? []).map((one) => ({
            fieldId: one.field,
            message: ownSentence(one, touchedSentences),
          }))}
        />
        <Caution sign={chrome.caution} title={w.cautionTitle}>
          <p>{w.caution}</p>
        </Caution>
        <Facts pairs={factsOf(props)} layout="rows" />
        <p>
          <a href={`/instruments/${instrument.id}`}>{w.instrument}</a>
        </p>
        {touched.length === 0 ? (
          <EmptyState title={w.none} text={w.noneText} />
        ) : form === null ? (
          <>
            <TouchedTable touched={touched} ticked={null} />
            <p class="soft">{w.onlyInspector}</p>
          </>
        ) : (
          <AnswerForm {...props} form={form} />
        )}
      </div>
    </Page>
  )
}

function factsOf({ instrument, found, window, touched }: TouchedPageProps) {
  const w = words.touched
  const open = touched.filter((one) => one.answer === null).length
  const of = calibrationUnit(instrument)
  const unit = of === '' ? '' : ` ${instrumentUnitSigns[of]}`
  const text = (error: number | null) =>
    error === null ? words.chrome.notStated : `${numberText(error)}${unit}`
  return [
    { label: w.calibration, value: `${found.calibratedOn} · ${found.certificateNumber}` },
    { label: w.error, value: text(found.asFoundError) },
    // What it was used with afterwards.
    ...(found.asLeft === 'beyond' ? [{ label: w.errorLeft, value: text(found.asLeftError) }] : []),
    { label: w.window, value: windowText(window, found) },
    { label: w.open, value: String(open) },
  ]
}

function windowText({ from, to }: DoubtWindow, { calibratedOn }: Calibration): string {
  const w = words.touched
  const until = to === null ? w.untilNow : to === calibratedOn ? w.untilFound(to) : w.untilGood(to)
  return `${from === null ? w.sinceEver : w.since(from)}, ${until}`
}

const AnswerForm: FC<TouchedPageProps & { form: TouchedForm }> = (props) => {
  const { instrument, found, touched, form } = props
  const w = words.touched
  const own = (field: string) => ownErrorOf(form.faults, field, touchedSentences)
  const recordsError = own('records').error
  return (
    <form method="post" action={`/instruments/${instrument.id}/touched`} class="stack">
      <input type="hidden" name="formKey" value={form.formKey} />
      <input type="hidden" name="seenAnswerId" value={String(form.seenAnswerId)} />
      <input type="hidden" name="calibration" value={String(found.id)} />
      <div id="records" class="stack" tabindex={-1}>
        {recordsError === undefined ? null : <p class="field-error">{recordsError}</p>}
        <TouchedTable touched={touched} ticked={form.ticked} />
      </div>
      <h2>{w.formTitle}</h2>
      <ChoiceCards
        name="answer"
        legend={w.answer}
        value={form.typed.answer}
        choices={doubtAnswers.map((value) => ({
          value,
          label: w.answers[value],
          detail: w.details[value],
        }))}
        {...own('answer')}
      />
      <TextAreaField
        name="reason"
        label={w.reason}
        hint={w.reasonHint}
        value={form.typed.reason}
        isRequired
        {...own('reason')}
      />
      <ButtonRow>
        <Button label={w.submit} kind="main" />
      </ButtonRow>
    </form>
  )
}
