import type { FC } from 'hono/jsx'
import type { ReleaseFault } from '../src/domain/release-faults.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { DecisionForm } from './decision-form.tsx'
import type { EvidencePageProps } from './evidence-page-props.ts'
import { minuteText } from './figures/time-text.ts'
import { releaseFaultSentence } from './words/en/inspection.ts'
import { words } from './words/en.ts'

const w = words.inspection
const { trade } = words

/** What was decided, or the form to decide, or why there is nothing to decide. */
export const DecisionCard: FC<EvidencePageProps> = (props) => {
  const { evidence, faults, form } = props
  const isWaiting = evidence.workOrder.stage === 'handed-over'
  // Not being an inspector is said by the missing form; an acknowledgement is asked in it.
  const inTheWay = faults.filter(
    (one) => one.id !== 'instrument-not-acknowledged' && one.id !== 'not-inspector',
  )
  const unacknowledged = faults.find((one) => one.id === 'instrument-not-acknowledged')
  return (
    <section class="card stack" id="decision">
      <h2>{w.decision}</h2>
      <Decisions {...props} />
      {isWaiting ? null : evidence.decisions.length > 0 ? null : <p>{w.notHandedOver}</p>}
      {isWaiting && inTheWay.length > 0 ? <InTheWay faults={inTheWay} /> : null}
      {isWaiting && form !== null ? (
        <DecisionForm
          number={evidence.workOrder.number}
          state={form}
          canRelease={inTheWay.length === 0}
          outOfCalibration={unacknowledged?.numbers ?? []}
        />
      ) : null}
      {isWaiting && form === null ? <p>{w.managerLooks}</p> : null}
    </section>
  )
}

const Decisions: FC<EvidencePageProps> = ({ evidence, certificates }) => (
  <>
    {evidence.decisions.map((one) => (
      <div class="stack-tight">
        <p>
          <VerdictMark
            verdict={one.outcome === 'released' ? 'pass' : 'refused'}
            word={trade.decision[one.outcome]}
          />
        </p>
        <p>{w.decided(trade.decision[one.outcome], one.byName, minuteText(one.at))}</p>
        {one.reason === '' ? null : <p class="soft">{one.reason}</p>}
      </div>
    ))}
    {certificates.map((number) => (
      <p>
        <a href={`/certificates/${number}`}>{w.certificate(number)}</a>
      </p>
    ))}
  </>
)

const InTheWay: FC<{ faults: readonly ReleaseFault[] }> = ({ faults }) => (
  <div class="stack-tight" id="in-the-way">
    <p class="strong">{w.inTheWay}</p>
    <ul class="plain-list stack-tight">
      {faults.map((one) => (
        <li>{releaseFaultSentence(one)}</li>
      ))}
    </ul>
  </div>
)
