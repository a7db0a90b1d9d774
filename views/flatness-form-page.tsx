import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { FlatnessBudgetInput } from '../src/domain/flatness-budget-input.ts'
import type { ReaderSpread } from '../src/domain/reader-spreads.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { numberText } from './figures/number-text.ts'
import { type FlatnessAnswer, FlatnessAnswerView } from './flatness/answer.tsx'
import { FlatnessAnswerMore } from './flatness/answer-more.tsx'
import { budgetFieldId } from './flatness/budget-fields.tsx'
import { CountQuestion } from './flatness/count-question.tsx'
import { flatnessSentence } from './flatness/fault-sentence.ts'
import type { FlatnessFormValues } from './flatness/form-values.ts'
import { guideFormId } from './flatness/guide-steps.tsx'
import { MoreFields } from './flatness/more-fields.tsx'
import { CauseQuestion, PatternCards, RingQuestion } from './flatness/pattern-cards.tsx'
import { Remembered } from './flatness/remembered.tsx'
import { type Frame, Page } from './page.tsx'
import { ConditionQuestion } from './recording/condition-question.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import type { FaceChoice } from './recording/face-choice.ts'
import { FaceQuestion } from './recording/face-question.tsx'
import type { InstrumentChoice } from './recording/instrument-field.tsx'
import { LampCaution } from './recording/lamp-caution.tsx'
import { LimitSource } from './recording/limit-source.tsx'
import { LimitsHead } from './recording/limits-head.tsx'
import { liveAnswer } from './recording/live-answer.ts'
import { Question } from './recording/question.tsx'
import { words } from './words/en.ts'

export type FlatnessForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly limitSetName: string
  readonly faces: readonly FaceChoice[]
  readonly choice: InstrumentChoice
  readonly values: FlatnessFormValues
  readonly formKey: string
  readonly faults: readonly Fault[]
  readonly answer: FlatnessAnswer
  readonly replaced: Replaced | null
  /** What the corrected reading states and the form doesn't ask for. */
  readonly carried: FlatnessBudgetInput['repeatability']
  /** Faces that several people have read: their spread is offered. */
  readonly spreads: readonly ReaderSpread[]
  /** The page follows a reading that was just recorded. */
  readonly isNext: boolean
}

export const FlatnessFormPage: FC<{ frame: Frame; form: FlatnessForm }> = ({ frame, form }) => {
  const { flatness: w, chrome } = words
  const action = `/work-orders/${form.orderNumber}/flatness`
  const title = form.replaced === null ? w.title : w.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${form.orderNumber}`}>
      <PageHead title={title} over={`${form.orderNumber} · ${form.sealSerial}`} />
      <form id={guideFormId}></form>
      <form method="post" action={action} class="reading">
        <input type="hidden" name="formKey" value={form.formKey} />
        <div>
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={form.faults.map((fault) => ({
              fieldId: budgetFieldId(fault.field, form.values.budget),
              message: flatnessSentence(fault, form.values.pattern),
            }))}
          />
          {form.isNext ? <Notice kind="done" text={w.recorded} /> : null}
          <Questions form={form} />
        </div>
        <aside class="reading-answer" aria-label={w.answerTitle}>
          <div id="answer" class="stack" aria-live="polite" {...liveAnswer(`${action}/preview`)}>
            <FlatnessAnswerView answer={form.answer} />
          </div>
          <ButtonRow>
            <Button label={words.recording.submit} kind="main" size="large" />
            {form.replaced === null && form.faces.length > 1 ? (
              <Button label={w.submitNext} name="after" value="other-face" />
            ) : null}
          </ButtonRow>
          <FlatnessAnswerMore answer={form.answer} />
        </aside>
      </form>
    </Page>
  )
}

const Questions: FC<{ form: FlatnessForm }> = ({ form }) => {
  const { flatness: w } = words
  const { values, faults } = form
  const error = (name: string) => {
    const fault = faults.find((one) => one.field === name)
    return fault === undefined ? {} : { error: flatnessSentence(fault, values.pattern) }
  }
  return (
    <>
      {form.replaced === null ? null : (
        <CorrectionFields replaced={form.replaced} reason={values.reason} {...error('reason')} />
      )}
      {form.carried === null ? null : (
        <Notice
          kind="note"
          text={w.budget.carried(
            numberText(form.carried.standardDeviationBands),
            form.carried.count,
          )}
        />
      )}
      <Remembered values={values} instruments={form.choice.instruments} />
      <FaceQuestion number={1} faces={form.faces} value={values.faceId} {...error('faceId')} />
      <ConditionQuestion number={2} value={values.condition} {...error('condition')} />
      <Question number={3} title={w.pattern}>
        <PatternCards value={values.pattern} {...error('pattern')} />
        <GuideFold />
        <RingQuestion value={values.ringCentre} />
        <CauseQuestion value={values.unreadableCause} {...error('unreadableCause')} />
      </Question>
      {values.readings.map((direction, index) => (
        <CountQuestion
          number={4 + index}
          index={index}
          values={direction}
          pattern={values.pattern}
          faults={faults}
        />
      ))}
      <MoreFields values={values} faults={faults} choice={form.choice} spreads={form.spreads} />
      <LimitsAndCautions form={form} />
    </>
  )
}

/** Fetched when it is first opened: it is large, and most know it by heart. */
const GuideFold: FC = () => {
  const w = words.flatnessGuide
  return (
    <details
      class="fold"
      id="guide"
      hx-get="/flatness-guide"
      hx-trigger="toggle once"
      hx-target="#guide-body"
      hx-swap="innerHTML"
    >
      <summary>{w.fold}</summary>
      <div class="fold-body" id="guide-body">
        <a href="/flatness-guide">{w.asPage}</a>
      </div>
    </details>
  )
}

/** What the reading is held against, and what to mind. */
const LimitsAndCautions: FC<{ form: FlatnessForm }> = ({ form }) => {
  const { trade } = words
  return (
    <section class="question stack">
      <LimitsHead setName={form.limitSetName} number={form.orderNumber} />
      {form.faces.map((face) => (
        <LimitSource label={trade.faceKind[face.kind]} limit={face.limit} />
      ))}
      <div id="cautions">
        <LampCaution />
      </div>
    </section>
  )
}
