import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { Missing } from '../src/domain/missing-for-hand-over.ts'
import type { HandMove, OrderActs } from '../src/domain/order-acts.ts'
import { Button } from './components/button.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { Notice } from './components/notice.tsx'
import { TextAreaField } from './components/text-area-field.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { errorOf } from './error-of.ts'
import { minuteText } from './figures/time-text.ts'
import { missingText } from './missing-text.ts'
import { RecordActs } from './order-record-acts.tsx'
import { words } from './words/en.ts'

export type OrderNextProps = {
  readonly evidence: Evidence
  readonly missing: readonly Missing[]
  readonly acts: OrderActs
  readonly certificateNumbers: readonly string[]
  readonly formKey: string
  readonly note: string
  readonly noteFaults: readonly Fault[]
}

/** What is to be done next, as buttons the size of a thumb. */
export const OrderNext: FC<OrderNextProps> = (props) => {
  const { evidence, missing, acts, certificateNumbers, formKey } = props
  const { workOrder: order } = evidence
  const w = words.workOrders
  return (
    <section class="card stack" aria-labelledby="next-title">
      <h2 id="next-title">{w.nextTitle}</h2>
      <Standing evidence={evidence} />
      {isAtWork(evidence) && order.decontamination === 'not-stated' ? <InQuarantine /> : null}
      {acts.canRecord ? <RecordActs evidence={evidence} missing={missing} acts={acts} /> : null}
      {isAtWork(evidence) ? <MissingList missing={missing} orderNumber={order.number} /> : null}
      {acts.canRecord ? <HandOverForm {...props} /> : null}
      {acts.moves.includes('stripped') ? <OpeningCaution /> : null}
      <ButtonRow>
        {certificateNumbers.map((number) => (
          <ButtonLink href={`/certificates/${number}`} label={w.certificate(number)} size="large" />
        ))}
        {acts.canSeeEvidence ? (
          <ButtonLink
            href={`/work-orders/${order.number}/inspection`}
            label={w.evidence}
            kind={order.stage === 'handed-over' ? 'main' : 'plain'}
            size="large"
          />
        ) : null}
        {acts.moves.map((to) => (
          <MoveForm number={order.number} to={to} formKey={formKey} />
        ))}
      </ButtonRow>
    </section>
  )
}

/** Stands above the button that says the seal is stripped. */
const OpeningCaution: FC = () => {
  const { opening } = words.workOrders
  return (
    <Caution sign={words.chrome.caution} title={opening.title}>
      <p>{opening.trapped}</p>
      <p>{opening.lifting}</p>
      <p>{opening.rules}</p>
    </Caution>
  )
}

/** Why the acts upon an opened seal are not offered, and where to make it good. */
const InQuarantine: FC = () => {
  const w = words.workOrders
  return (
    <p>
      {w.inQuarantine} <a href="#decontamination">{w.inQuarantineLink}</a>
    </p>
  )
}

function isAtWork({ workOrder }: Evidence): boolean {
  const { stage } = workOrder
  return !['handed-over', 'released', 'dispatched', 'withdrawn'].includes(stage)
}

const Standing: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const { workOrder, handOver } = evidence
  const w = words.workOrders
  if (workOrder.stage === 'handed-over' && handOver !== null) {
    return <p>{w.waitsForInspector(handOver.byName, minuteText(handOver.at))}</p>
  }
  if (workOrder.stage === 'released') return <p>{w.readyForDispatch}</p>
  if (workOrder.stage === 'refused') return <Refusal evidence={evidence} />
  return isAtWork(evidence) ? null : <p>{w.over}</p>
}

const Refusal: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const decision = evidence.decisions.at(-1)
  if (decision === undefined) return null
  return (
    <div>
      <VerdictMark
        verdict="refused"
        word={words.workOrders.refusedTitle(decision.byName, minuteText(decision.at))}
      />
      <p>{decision.reason}</p>
    </div>
  )
}

const MissingList: FC<{ missing: readonly Missing[]; orderNumber: string }> = (props) => {
  const { missing, orderNumber } = props
  const w = words.workOrders
  if (missing.length === 0) return <Notice kind="done" text={w.nothingMissing} />
  return (
    <div>
      <h3>{w.missingTitle}</h3>
      <ul class="stack-tight">
        {missing.map((one) => (
          <li>
            <VerdictMark verdict="missing" word={missingText(one)} />
            {one.survey === undefined ? null : (
              <a
                class="link-line"
                href={`/work-orders/${orderNumber}/run-out-surveys/${one.survey.id}`}
              >
                {w.toSurvey(words.trade.characteristic[one.survey.characteristic])}
              </a>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}

/** Pressable also while something is missing: the answer is the list of it. */
const HandOverForm: FC<OrderNextProps> = (props) => {
  const { evidence, missing, formKey, note, noteFaults } = props
  const w = words.workOrders
  return (
    <form method="post" action={`/work-orders/${evidence.workOrder.number}/hand-over`}>
      <input type="hidden" name="formKey" value={`${formKey}-hand-over`} />
      <TextAreaField
        name="note"
        label={w.handOverNote}
        hint={w.handOverNoteHint}
        value={note}
        rows={2}
        {...errorOf(noteFaults, 'note')}
      />
      <ButtonRow>
        <Button label={w.handOver} kind={missing.length === 0 ? 'main' : 'plain'} size="large" />
      </ButtonRow>
    </form>
  )
}

const MoveForm: FC<{ number: string; to: HandMove; formKey: string }> = (props) => {
  const { number, to, formKey } = props
  return (
    <form method="post" action={`/work-orders/${number}/stage`}>
      <input type="hidden" name="formKey" value={`${formKey}-${to}`} />
      <input type="hidden" name="to" value={to} />
      <Button
        label={words.workOrders.moveTo[to]}
        {...(to === 'dispatched' ? ({ kind: 'main', size: 'large' } as const) : {})}
      />
    </form>
  )
}
