import type { FC } from 'hono/jsx'
import type { CertifiedLapping } from '../src/domain/certified-lapping.ts'
import type { FacePhoto } from '../src/domain/face-photo.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { JudgedReading, JudgedTest, JudgedValue } from '../src/domain/judged-evidence.ts'
import type { LapRow } from '../src/domain/lap-rows.ts'
import type { StageStep } from '../src/domain/stage-steps.ts'
import type { UseException } from '../src/domain/use-exception.ts'
import { AlignmentLink } from './alignment/alignment-link.tsx'
import { Button } from './components/button.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { ErrorSummary } from './components/error-summary.tsx'
import { Notice } from './components/notice.tsx'
import { PageHead } from './components/page-head.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { numberText } from './figures/number-text.ts'
import { FindingsLine } from './findings/findings-line.tsx'
import { missingPlace, missingText } from './missing-text.ts'
import { DecontaminationForm, type DecontaminationTyped } from './order-decontamination.tsx'
import { OrderExceptions } from './order-exceptions.tsx'
import { OrderFacts, SealFacts } from './order-facts.tsx'
import { OrderHistory, OrderWay } from './order-history.tsx'
import { OrderLaps } from './order-laps.tsx'
import { OrderMaps } from './order-maps.tsx'
import { OrderNext, type OrderNextProps } from './order-next.tsx'
import { OrderReadings } from './order-readings.tsx'
import { OrderRule, type RuleTyped } from './order-rule.tsx'
import { OrderRuns } from './order-runs.tsx'
import { OrderStrip } from './order-strip.tsx'
import { OpenSurveys } from './order-surveys.tsx'
import { OrderTests } from './order-tests.tsx'
import { OrderValues } from './order-values.tsx'
import { ownErrorOf } from './own-error-of.ts'
import { type Frame, Page } from './page.tsx'
import { ReaderSpreads } from './reader-spreads.tsx'
import { summaryFaults } from './summary-faults.ts'
import { words } from './words/en.ts'

const withdrawalSentences = { 'reason empty': words.workOrders.withdrawReasonNeeded } as const

export type OrderDone = 'recorded' | 'handedOver' | 'received'

/** What was typed into one of the page's forms and refused. */
export type OrderTyped = {
  readonly isHandOverRefused: boolean
  readonly note: string
  readonly noteFaults: readonly Fault[]
  readonly withdrawal: { readonly reason: string; readonly faults: readonly Fault[] }
  readonly rule: RuleTyped
  readonly decontamination: DecontaminationTyped & { readonly faults: readonly Fault[] }
}

export type WorkOrderPageProps = Omit<OrderNextProps, 'note' | 'noteFaults'> & {
  readonly frame: Frame
  readonly steps: readonly StageStep[]
  readonly readings: readonly JudgedReading[]
  readonly tests: readonly JudgedTest[]
  readonly values: readonly JudgedValue[]
  readonly laps: readonly LapRow[]
  readonly lapping: readonly CertifiedLapping[]
  readonly stripRecords: Parameters<typeof OrderStrip>[0]['records']
  readonly exceptions: readonly UseException[]
  readonly photos: readonly FacePhoto[]
  readonly done: OrderDone | null
  readonly typed: OrderTyped
}

/** The traveller: everything about one order, and what is to be done next. */
export const WorkOrderPage: FC<WorkOrderPageProps> = (props) => {
  const { frame, evidence, steps, readings, tests, values, acts, missing, done, typed } = props
  const { workOrder: order, customer, equipment, seal } = evidence
  const { trade, workOrders: w } = words
  const base = `/work-orders/${order.number}`
  const over = [customer.name, ...(equipment === null ? [] : [equipment.tag])].join(' · ')
  const arrangement = trade.arrangement[seal.arrangement].toLowerCase()
  const lead = w.lead(seal.serial, arrangement, numberText(seal.shaftDiameterMm))
  return (
    <Page frame={frame} title={order.number} width="wide">
      <PageHead title={order.number} over={over} lead={lead} />
      <div class="stack-loose">
        {done === null ? null : <Notice kind="done" text={w[done]} />}
        <ErrorSummary
          title={w.notHandedOver}
          faults={
            typed.isHandOverRefused
              ? missing.map((one) => ({ fieldId: missingPlace(one), message: missingText(one) }))
              : []
          }
        />
        <TypedFaults typed={typed} />
        <OrderWay steps={steps} />
        <div class="split">
          <div class="stack-loose">
            {acts.canStateDecontamination && order.decontamination === 'not-stated' ? (
              <Decontamination {...props} />
            ) : null}
            {acts.canRecord ? (
              <OpenSurveys surveys={evidence.dialSurveys} orderNumber={order.number} />
            ) : null}
            <OrderNext {...props} note={typed.note} noteFaults={typed.noteFaults} />
            <section id="readings" class="records" aria-labelledby="readings-title">
              <div class="section-head">
                <h2 id="readings-title">{w.readingsTitle}</h2>
              </div>
              <OrderReadings
                readings={readings}
                orderNumber={order.number}
                correctHref={acts.canRecordOpened ? `${base}/flatness/new` : null}
              />
              <OrderMaps
                readings={evidence.flatnessReadings}
                photos={props.photos}
                orderNumber={order.number}
                canRead={acts.canRecordOpened}
              />
              <ReaderSpreads evidence={evidence} />
            </section>
            <OrderLaps
              rows={props.laps}
              lapping={props.lapping}
              correctHref={acts.canRecordOpened ? `${base}/lap-cycles/new` : null}
            />
            <section id="tests" class="records" aria-labelledby="tests-title">
              <div class="section-head">
                <h2 id="tests-title">{w.testsTitle}</h2>
              </div>
              <OrderTests
                tests={tests}
                orderNumber={order.number}
                correctHref={acts.canRecordOpened ? `${base}/static-tests/new` : null}
              />
            </section>
            <OrderValues
              values={values}
              components={seal.components}
              orderNumber={order.number}
              correctHref={acts.canRecord ? `${base}/measured-values/new` : null}
              canCorrectFaces={acts.canRecordOpened}
            />
            <OrderRuns runs={evidence.dynamicRuns} orderNumber={order.number} />
            <AlignmentLink evidence={evidence} />
            <FindingsLine evidence={evidence} />
            <OrderStrip
              evidence={evidence}
              records={props.stripRecords}
              correctHref={acts.canRecordOpened ? base : null}
            />
            <OrderExceptions
              exceptions={props.exceptions}
              answersHref={acts.canSeeEvidence ? '/inspection' : null}
            />
            <section class="records" aria-labelledby="history-title">
              <div class="section-head">
                <h2 id="history-title">{w.historyTitle}</h2>
              </div>
              <OrderHistory evidence={evidence} />
            </section>
          </div>
          <div class="stack">
            <SealFacts evidence={evidence} />
            <OrderFacts evidence={evidence} />
            <OrderRule evidence={evidence} acts={acts} formKey={props.formKey} typed={typed.rule} />
            {acts.canStateDecontamination && order.decontamination !== 'not-stated' ? (
              <Decontamination {...props} />
            ) : null}
            {acts.canWithdraw ? <Withdrawal {...props} /> : null}
          </div>
        </div>
      </div>
    </Page>
  )
}

/** What was refused in one of the page's forms, said above: the form itself may be far below. */
const TypedFaults: FC<{ typed: OrderTyped }> = ({ typed }) => {
  const w = words.workOrders
  const labels: Readonly<Record<string, string>> = {
    note: w.handOverNote,
    reason: w.withdraw,
    decontamination: w.decontaminationLegend,
    lastFluid: w.lastFluid,
  }
  const { noteFaults, withdrawal, decontamination } = typed
  const faults = [...noteFaults, ...withdrawal.faults, ...decontamination.faults]
  const lines = summaryFaults(faults, (field) => labels[field], withdrawalSentences)
  return <ErrorSummary title={words.chrome.faultsTitle} faults={lines} />
}

const Decontamination: FC<WorkOrderPageProps> = ({ evidence, formKey, typed }) => (
  <DecontaminationForm
    number={evidence.workOrder.number}
    isStated={evidence.workOrder.decontamination !== 'not-stated'}
    formKey={formKey}
    typed={typed.decontamination}
    faults={typed.decontamination.faults}
  />
)

/** Ends the order; folded away, since it can't be taken back. */
const Withdrawal: FC<WorkOrderPageProps> = ({ evidence, formKey, typed }) => {
  const w = words.workOrders
  const { reason, faults } = typed.withdrawal
  return (
    <details class="fold" open={faults.length > 0}>
      <summary>{w.withdraw}</summary>
      <form
        method="post"
        action={`/work-orders/${evidence.workOrder.number}/stage`}
        class="fold-body"
      >
        <input type="hidden" name="formKey" value={`${formKey}-withdrawn`} />
        <input type="hidden" name="to" value="withdrawn" />
        <TextAreaField
          name="reason"
          label={w.withdrawReason}
          hint={w.withdrawHint}
          value={reason}
          isRequired
          {...ownErrorOf(faults, 'reason', withdrawalSentences)}
        />
        <ButtonRow>
          <Button label={w.withdrawSubmit} kind="stop" />
        </ButtonRow>
      </form>
    </details>
  )
}
