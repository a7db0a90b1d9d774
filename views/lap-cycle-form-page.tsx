import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import { lapFigureNames } from '../src/domain/lap-cycle.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { type LapAnswer, LapAnswerMore, LapAnswerView } from './lap-cycles/answer.tsx'
import { type LapTyped, lapFieldProps } from './lap-cycles/fields.tsx'
import { LapMoreFields } from './lap-cycles/more-fields.tsx'
import { type LapFace, LapQuestions } from './lap-cycles/questions.tsx'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import { liveAnswer } from './recording/live-answer.ts'
import { words } from './words/en.ts'

export type LapForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly faces: readonly LapFace[]
  readonly plates: readonly string[]
  readonly typed: LapTyped
  readonly formKey: string
  readonly answer: LapAnswer
  readonly replaced: Replaced | null
}

export const LapCycleFormPage: FC<{ frame: Frame; form: LapForm }> = ({ frame, form }) => {
  const { typed } = form
  const { lapping: w, chrome } = words
  const action = `/work-orders/${form.orderNumber}/lap-cycles`
  const title = form.replaced === null ? w.title : w.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${form.orderNumber}`}>
      <PageHead title={title} over={`${form.orderNumber} · ${form.sealSerial}`} />
      <form method="post" action={action} class="reading">
        <input type="hidden" name="formKey" value={form.formKey} />
        <div>
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={typed.faults.map((fault) => ({
              fieldId: fieldId(fault.field, form),
              message: summarySentence(fault),
            }))}
          />
          <Hazard />
          {form.replaced === null ? null : (
            <CorrectionFields
              replaced={form.replaced}
              reason={typed.values.reason}
              error={lapFieldProps(typed, 'reason').error}
            />
          )}
          <LapQuestions faces={form.faces} plates={form.plates} typed={typed} />
          <LapMoreFields typed={typed} />
        </div>
        <aside class="reading-answer" aria-label={w.answer}>
          <div id="answer" class="stack" aria-live="polite" {...liveAnswer(`${action}/preview`)}>
            <LapAnswerView answer={form.answer} />
          </div>
          <ButtonRow>
            <Button label={words.recording.submit} kind="main" size="large" />
          </ButtonRow>
          <LapAnswerMore answer={form.answer} />
        </aside>
      </form>
    </Page>
  )
}

/** Stands before the numbers: it is read before the plate turns. */
const Hazard: FC = () => (
  <div class="question">
    <Caution sign={words.chrome.caution} title={words.lapping.cautionTitle}>
      {words.lapping.caution.map((text) => (
        <p>{text}</p>
      ))}
    </Caution>
  </div>
)

/** Where the summary of faults leads to. */
function fieldId(field: string, { plates }: LapForm): string {
  if (field === 'plate') return plates.length === 0 ? 'otherPlate' : 'plate-1'
  return ['componentId', 'plateForm'].includes(field) ? `${field}-1` : field
}

/** A general sentence names its field first; the form's own sentences do so themselves. */
function summarySentence(fault: Fault): string {
  const { lapping: w } = words
  const sentence = ownSentence(fault, w.faults)
  const label = labels[fault.field]
  return `${fault.field} ${fault.kind}` in w.faults || label === undefined
    ? sentence
    : `${label}: ${sentence}`
}

const { lapping } = words
const labels: Readonly<Record<string, string>> = {
  ...Object.fromEntries(lapFigureNames.map((name) => [name, lapping.figures[name].label])),
  plate: lapping.plate,
  grit: lapping.grit,
  note: lapping.note,
}
