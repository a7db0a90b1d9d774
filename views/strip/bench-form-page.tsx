import type { Child, FC } from 'hono/jsx'
import { Button } from '../components/button.tsx'
import { ButtonRow } from '../components/button-row.tsx'
import { Caution } from '../components/caution.tsx'
import { ErrorSummary } from '../components/error-summary.tsx'
import { PageHead } from '../components/page-head.tsx'
import { ownSentence } from '../own-error-of.ts'
import { type Frame, Page } from '../page.tsx'
import { CorrectionFields, type Replaced } from '../recording/correction-fields.tsx'
import { liveAnswer } from '../recording/live-answer.ts'
import { words } from '../words/en.ts'
import { type BenchTyped, benchId, benchProps } from './bench-fields.tsx'
import { StripAnswer, StripAnswerMore, type StripAnswerProps } from './strip-answer.tsx'

export type BenchForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  /** Below the order's address: `wear-tracks`. */
  readonly place: string
  readonly typed: BenchTyped
  readonly formKey: string
  readonly replaced: Replaced | null
}

type BenchWords = {
  readonly title: string
  readonly correctionTitle: string
  readonly cautionTitle: string
  readonly caution: readonly string[]
  readonly answer: string
}

/** A form of the strip bench: what to mind first, then questions, the answer beside them. */
export const BenchFormPage: FC<{
  frame: Frame
  form: BenchForm
  own: BenchWords
  /** Of fields whose general sentences don't name them. */
  labels: Readonly<Record<string, string>>
  answer: StripAnswerProps
  children: Child
}> = ({ frame, form, own, labels, answer, children }) => {
  const { typed, replaced } = form
  const action = `/work-orders/${form.orderNumber}/${form.place}`
  const title = replaced === null ? own.title : own.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${form.orderNumber}`}>
      <PageHead title={title} over={`${form.orderNumber} · ${form.sealSerial}`} />
      <form method="post" action={action} class="reading">
        <input type="hidden" name="formKey" value={form.formKey} />
        <div>
          <ErrorSummary
            title={words.chrome.faultsTitle}
            faults={typed.faults.map((fault) => ({
              fieldId: fieldId(fault.field),
              message: summarySentence(fault, typed, labels),
            }))}
          />
          <div class="question">
            <Caution sign={words.chrome.caution} title={own.cautionTitle}>
              {own.caution.map((text) => (
                <p>{text}</p>
              ))}
            </Caution>
          </div>
          {replaced === null ? null : (
            <CorrectionFields
              replaced={replaced}
              reason={typed.values.reason ?? ''}
              error={benchProps(typed, 'reason').error}
            />
          )}
          {children}
        </div>
        <aside class="reading-answer" aria-label={own.answer}>
          <div id="answer" class="stack" aria-live="polite" {...liveAnswer(`${action}/preview`)}>
            <StripAnswer {...answer} />
          </div>
          <ButtonRow>
            <Button label={words.recording.submit} kind="main" size="large" />
          </ButtonRow>
          <StripAnswerMore answer={answer} />
        </aside>
      </form>
    </Page>
  )
}

const onCards = ['componentId', 'condition', 'clips', 'isTurningFree']
const firstOfList: Readonly<Record<string, string>> = {
  trackWidths: 'trackWidths[0].widthMm',
  loads: 'loads[0].lengthMm',
  setScrews: 'setScrews[0].name',
}

/** Where the summary of faults leads to. */
function fieldId(field: string): string {
  const id = benchId(firstOfList[field] ?? field)
  return onCards.includes(field) ? `${id}-1` : id
}

/** A general sentence names its field first; the form's own sentences do so themselves. */
function summarySentence(
  fault: BenchTyped['faults'][number],
  { own }: BenchTyped,
  labels: Readonly<Record<string, string>>,
): string {
  const sentence = ownSentence(fault, own)
  const name = fault.field.split('.').at(-1) ?? fault.field
  const label = labels[name]
  return `${name} ${fault.kind}` in own || label === undefined ? sentence : `${label}: ${sentence}`
}
