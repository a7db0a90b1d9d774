import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { Limit } from '../src/domain/limit-set.ts'
import type { MeasuredFamily } from '../src/domain/measured-family.ts'
import type { FaceKind } from '../src/domain/seal.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { PageHead } from './components/page-head.tsx'
import { type MeasuredAnswer, MeasuredAnswerView } from './measured-values/answer.tsx'
import { MeasuredAnswerMore } from './measured-values/answer-more.tsx'
import { type Typed, typedProps } from './measured-values/fields.tsx'
import { MeasuredMoreFields } from './measured-values/more-fields.tsx'
import { MeasuredQuestions } from './measured-values/questions.tsx'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import type { InstrumentChoice } from './recording/instrument-field.tsx'
import { LimitSource } from './recording/limit-source.tsx'
import { LimitsHead } from './recording/limits-head.tsx'
import { liveAnswer } from './recording/live-answer.ts'
import { words } from './words/en.ts'

export type MeasuredFace = {
  readonly id: number
  readonly kind: FaceKind
  readonly material: string
}

export type MeasuredForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly family: MeasuredFamily
  readonly limitSetName: string
  /** Each with the face that it holds for; null where it holds for the machine. */
  readonly limits: readonly { readonly limit: Limit; readonly face: FaceKind | null }[]
  readonly faces: readonly MeasuredFace[]
  readonly choice: InstrumentChoice
  readonly typed: Typed
  readonly formKey: string
  readonly answer: MeasuredAnswer
  readonly replaced: Replaced | null
}

export const MeasuredValueFormPage: FC<{ frame: Frame; form: MeasuredForm }> = (props) => {
  const { frame, form } = props
  const { family, typed } = form
  const { measuredValues: w, chrome } = words
  const action = `/work-orders/${form.orderNumber}/measured-values`
  const title = (form.replaced === null ? w.title : w.correctionTitle)[family]
  return (
    <Page frame={frame} title={`${title} ${form.orderNumber}`}>
      <PageHead title={title} over={`${form.orderNumber} · ${form.sealSerial}`} />
      <form method="post" action={action} class="reading">
        <input type="hidden" name="formKey" value={form.formKey} />
        <div>
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={typed.faults.map((fault) => ({
              fieldId: fieldId(fault.field),
              message: summarySentence(fault),
            }))}
          />
          {family === 'dial' ? <Hazard /> : null}
          {form.replaced === null ? null : (
            <CorrectionFields
              replaced={form.replaced}
              reason={typed.values.reason}
              error={typedProps(typed, 'reason').error}
            />
          )}
          <MeasuredQuestions family={family} faces={form.faces} typed={typed} />
          <MeasuredMoreFields family={family} typed={typed} choice={form.choice} />
          <Limits form={form} />
        </div>
        <aside class="reading-answer" aria-label={w.answer}>
          <div id="answer" class="stack" aria-live="polite" {...liveAnswer(`${action}/preview`)}>
            <MeasuredAnswerView answer={form.answer} />
          </div>
          <ButtonRow>
            <Button label={words.recording.submit} kind="main" size="large" />
          </ButtonRow>
          <MeasuredAnswerMore answer={form.answer} />
        </aside>
      </form>
    </Page>
  )
}

/** Stands before the numbers: it is read before the shaft is turned. */
const Hazard: FC = () => (
  <div class="question">
    <Caution sign={words.chrome.caution} title={words.measuredValues.cautionTitle}>
      {words.measuredValues.caution.map((text) => (
        <p>{text}</p>
      ))}
    </Caution>
  </div>
)

const Limits: FC<{ form: MeasuredForm }> = ({ form }) => {
  const { trade } = words
  return (
    <section class="question stack">
      <LimitsHead setName={form.limitSetName} number={form.orderNumber} />
      {form.limits.length === 0 ? <p class="small soft">{trade.why['no-limit']}</p> : null}
      {form.limits.map(({ limit, face }) => {
        const what = trade.characteristic[limit.characteristic]
        const label = face === null ? what : `${what}, ${trade.faceKind[face].toLowerCase()}`
        return <LimitSource label={label} limit={limit} />
      })}
    </section>
  )
}

/** Where the summary of faults leads to. */
function fieldId(field: string): string {
  if (['characteristic', 'componentId', 'condition'].includes(field)) return `${field}-1`
  const index = /^readings(?:\[(\d+)\])?/.exec(field)
  return index === null ? field : `reading-${index[1] ?? 0}`
}

/** A general sentence names its field first; the form's own sentences do so themselves. */
function summarySentence(fault: Fault): string {
  const { measuredValues: w } = words
  const sentence = ownSentence(fault, w.faults)
  const name = fault.field.split('.').at(-1) ?? fault.field
  const label = labels[name]
  return `${name} ${fault.kind}` in w.faults || label === undefined
    ? sentence
    : `${label}: ${sentence}`
}

const { measuredValues } = words
const labels: Readonly<Record<string, string>> = {
  value: measuredValues.reading(1),
  unit: measuredValues.unit,
  sizeMm: measuredValues.bore,
  instrumentId: measuredValues.instrument,
  leverAngleDeg: measuredValues.budget.leverAngleDeg.label,
  cutOffMm: measuredValues.budget.cutOffMm.label,
  evaluationLengthMm: measuredValues.budget.evaluationLengthMm.label,
  tipRadiusUm: measuredValues.budget.tipRadiusUm.label,
  traceDirection: measuredValues.trace,
  faceState: words.finish.state,
  settingStandardUncertaintyUm: measuredValues.budget.settingStandardUncertaintyUm.label,
  temperatureHalfWidthK: measuredValues.budget.temperatureHalfWidthK.label,
  note: measuredValues.note,
}
