import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { Fault } from '../src/domain/fault.ts'
import type { Missing } from '../src/domain/missing-for-hand-over.ts'
import type { HandMove, OrderActs } from '../src/domain/order-acts.ts'
import { faceKinds } from '../src/domain/seal.ts'
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
import { stripActs } from './strip/strip-acts.ts'
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
      {acts.canRecord ? <RecordActs {...props} /> : null}
      {isAtWork(evidence) ? <MissingList missing={missing} /> : null}
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

/** The missing acts in large; what is recorded already can be done again. */
const RecordActs: FC<OrderNextProps> = ({ evidence, missing, acts }) => {
  const base = `/work-orders/${evidence.workOrder.number}`
  return (
    <ButtonRow>
      {acts.canRecordOpened ? <OpenedActs evidence={evidence} missing={missing} /> : null}
      <ButtonLink href={`${base}/run-out-surveys/new`} label={words.surveys.act} size="large" />
      <ButtonLink
        href={`${base}/measured-values/new`}
        label={words.measuredValues.act.dial}
        size="large"
      />
    </ButtonRow>
  )
}

const faceActs = [
  ['roughness', '?characteristic=roughness'],
  ['height', '?characteristic=face-height'],
] as const

/** What is done upon a seal that is open: everything but what is read at the machine. */
const OpenedActs: FC<{ evidence: Evidence; missing: readonly Missing[] }> = (props) => {
  const { evidence, missing } = props
  const w = words.workOrders
  const { number } = evidence.workOrder
  const isTestMissing = missing.some((one) => one.kind === 'static-test')
  const faces = faceKinds.flatMap((kind) => {
    return evidence.seal.components.filter((one) => one.kind === kind)
  })
  return (
    <>
      {faces.map((face) => (
        <ButtonLink
          href={`/work-orders/${number}/flatness/new?face=${face.id}`}
          label={w.readFace(words.trade.componentKind[face.kind])}
          kind={missing.some((one) => one.faceKind === face.kind) ? 'main' : 'plain'}
          size="large"
        />
      ))}
      <ButtonLink
        href={`/work-orders/${number}/face-photos/new`}
        label={words.facePhoto.orderLink}
        size="large"
      />
      <ButtonLink
        href={`/work-orders/${number}/static-tests/new`}
        label={w.test}
        kind={isTestMissing ? 'main' : 'plain'}
        size="large"
      />
      <ButtonLink
        href={`/work-orders/${number}/lap-cycles/new`}
        label={words.lapping.act}
        size="large"
      />
      <ButtonLink
        href={`/work-orders/${number}/strip`}
        label={words.findings.stripAct}
        kind={evidence.workOrder.stage === 'received' ? 'main' : 'plain'}
        size="large"
      />
      {stripActs.map(([place, label]) => (
        <ButtonLink href={`/work-orders/${number}/${place}/new`} label={label} size="large" />
      ))}
      {faceActs.map(([family, query]) => (
        <ButtonLink
          href={`/work-orders/${number}/measured-values/new${query}`}
          label={words.measuredValues.act[family]}
          size="large"
        />
      ))}
    </>
  )
}

const MissingList: FC<{ missing: readonly Missing[] }> = ({ missing }) => {
  const w = words.workOrders
  if (missing.length === 0) return <Notice kind="done" text={w.nothingMissing} />
  return (
    <div>
      <h3>{w.missingTitle}</h3>
      <ul class="stack-tight">
        {missing.map((one) => (
          <li>
            <VerdictMark verdict="missing" word={missingText(one)} />
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
