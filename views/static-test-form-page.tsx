import type { FC } from 'hono/jsx'
import type { Fault } from '../src/domain/fault.ts'
import type { Limit } from '../src/domain/limit-set.ts'
import type { StaticTestBudgetInput } from '../src/domain/static-test.ts'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { numberText } from './figures/number-text.ts'
import { startPressureText } from './figures/start-pressure-text.ts'
import { ownSentence } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { CorrectionFields, type Replaced } from './recording/correction-fields.tsx'
import type { InstrumentChoice } from './recording/instrument-field.tsx'
import { LimitSource } from './recording/limit-source.tsx'
import { LimitsHead } from './recording/limits-head.tsx'
import { liveAnswer } from './recording/live-answer.ts'
import { type StaticTestAnswer, StaticTestAnswerView } from './static-tests/answer.tsx'
import { StaticTestAnswerMore } from './static-tests/answer-more.tsx'
import { type Typed, typedProps } from './static-tests/fields.tsx'
import { StaticTestMoreFields } from './static-tests/more-fields.tsx'
import { StaticTestQuestions } from './static-tests/questions.tsx'
import { words } from './words/en.ts'

export type StaticTestForm = {
  readonly orderNumber: string
  readonly sealSerial: string
  readonly limitSetName: string
  readonly limits: readonly Limit[]
  readonly choice: InstrumentChoice
  /** The present minute in words. */
  readonly now: string
  readonly typed: Typed
  readonly formKey: string
  readonly answer: StaticTestAnswer
  readonly replaced: Replaced | null
  /** What the corrected test states, also what the form doesn't ask for. */
  readonly carried: StaticTestBudgetInput | null
}

export const StaticTestFormPage: FC<{ frame: Frame; form: StaticTestForm }> = (props) => {
  const { frame, form } = props
  const { staticTests: w, chrome } = words
  const action = `/work-orders/${form.orderNumber}/static-tests`
  const title = form.replaced === null ? w.title : w.correctionTitle
  return (
    <Page frame={frame} title={`${title} ${form.orderNumber}`}>
      <PageHead title={title} over={`${form.orderNumber} · ${form.sealSerial}`} />
      <form method="post" action={action} class="reading">
        <input type="hidden" name="formKey" value={form.formKey} />
        <div>
          <ErrorSummary
            title={chrome.faultsTitle}
            faults={form.typed.faults.map((fault) => ({
              fieldId: fault.field === 'section' ? 'section-1' : fault.field,
              message: summarySentence(fault),
            }))}
          />
          <Hazard />
          {form.replaced === null ? null : (
            <CorrectionFields
              replaced={form.replaced}
              reason={form.typed.values.reason}
              error={typedProps(form.typed, 'reason').error}
            />
          )}
          <Carried steps={form.carried} />
          <StaticTestQuestions typed={form.typed} now={form.now} />
          <StaticTestMoreFields typed={form.typed} choice={form.choice} />
          <Limits form={form} />
        </div>
        <aside class="reading-answer" aria-label={w.answer}>
          <div id="answer" class="stack" aria-live="polite" {...liveAnswer(`${action}/preview`)}>
            <StaticTestAnswerView answer={form.answer} />
          </div>
          <ButtonRow>
            <Button label={words.recording.submit} kind="main" size="large" />
          </ButtonRow>
          <StaticTestAnswerMore answer={form.answer} />
        </aside>
      </form>
    </Page>
  )
}

/** Steps of displays that a program stated: the form keeps them and has no field for them. */
const Carried: FC<{ steps: StaticTestBudgetInput | null }> = ({ steps }) => {
  const w = words.staticTests
  const { resolutionPa, resolutionK } = steps ?? {}
  const stated = [
    ...(resolutionPa === undefined
      ? []
      : [`${numberText(resolutionPa)} ${w.budget.unit.pressureUncertaintyPa}`]),
    ...(resolutionK === undefined
      ? []
      : [`${numberText(resolutionK)} ${w.budget.unit.temperatureUncertaintyK}`]),
  ]
  return stated.length === 0 ? null : <Notice kind="note" text={w.budget.carried(stated)} />
}

/** Stands before the numbers: it is read before the valve is opened. */
const Hazard: FC = () => (
  <div class="question">
    <Caution sign={words.chrome.caution} title={words.staticTests.cautionTitle}>
      {words.staticTests.caution.map((text) => (
        <p>{text}</p>
      ))}
    </Caution>
  </div>
)

const Limits: FC<{ form: StaticTestForm }> = ({ form }) => {
  const { trade } = words
  return (
    <section class="question stack">
      <LimitsHead setName={form.limitSetName} number={form.orderNumber} />
      {form.limits.length === 0 ? <p class="small soft">{trade.why['no-limit']}</p> : null}
      {form.limits.map((limit) => (
        <>
          <LimitSource label={trade.characteristic[limit.characteristic]} limit={limit} />
          {writtenFor(limit) === '' ? null : <p class="small soft">{writtenFor(limit)}</p>}
        </>
      ))}
    </section>
  )
}

/** How a test must be held for the limit to apply; nothing where it applies to every test. */
function writtenFor({ withinS, volumeAtMostL, startAtLeastKPaGauge }: Limit): string {
  const w = words.staticTests
  return [
    ...(withinS === null ? [] : [w.holdFor(numberText(withinS))]),
    ...(volumeAtMostL === null ? [] : [w.volumeFor(numberText(volumeAtMostL))]),
    ...(startAtLeastKPaGauge === null ? [] : [w.startFor(startPressureText(startAtLeastKPaGauge))]),
  ].join(', ')
}

/** A general sentence names its field first; the form's own sentences do so themselves. */
function summarySentence(fault: Fault): string {
  const { staticTests: w } = words
  const sentence = ownSentence(fault, w.faults)
  const label = fieldLabels[fault.field]
  const isOwn = `${fault.field} ${fault.kind}` in w.faults
  return isOwn || label === undefined ? sentence : `${label}: ${sentence}`
}

const { staticTests } = words
const fieldLabels: Readonly<Record<string, string>> = {
  startPressure: staticTests.startPressure,
  endPressure: staticTests.endPressure,
  startTemperatureC: staticTests.startTemperature,
  endTemperatureC: staticTests.endTemperature,
  durationMin: staticTests.minutes,
  durationS: staticTests.minutes,
  startedAt: staticTests.startedAt,
  volumeL: staticTests.volumeLabel,
  barometerKPa: staticTests.barometer,
  stabilisationS: staticTests.stabilisation,
}
