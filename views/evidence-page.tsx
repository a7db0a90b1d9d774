import type { FC } from 'hono/jsx'
import type { Doubt } from '../src/domain/doubt.ts'
import type { Evidence } from '../src/domain/evidence.ts'
import { AgreedRuleText } from './agreed-rule-text.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { Caution } from './components/caution.tsx'
import { Facts } from './components/facts.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { DecisionCard } from './decision-card.tsx'
import { EvidenceCourse } from './evidence-course.tsx'
import type { EvidencePageProps } from './evidence-page-props.ts'
import { EvidenceResults } from './evidence-results.tsx'
import { numberText } from './figures/number-text.ts'
import { dayText } from './figures/time-text.ts'
import { CertifiedFindings } from './findings/certified-findings.tsx'
import { LapLines } from './lap-lines.tsx'
import { OrderRuns } from './order-runs.tsx'
import { Page } from './page.tsx'
import { ReaderSpreads } from './reader-spreads.tsx'
import { RecordCorrections } from './record-corrections.tsx'
import { hasStripRecords, StripLines } from './strip-lines.tsx'
import { CertifiedSurveys } from './survey-figures/certified-surveys.tsx'
import { words } from './words/en.ts'

const w = words.inspection
const { trade } = words

/** Everything about a work order on one page, and the decision at its foot. */
export const EvidencePage: FC<EvidencePageProps> = (props) => {
  const { frame, evidence, record, conflict } = props
  const { workOrder, seal, customer, equipment } = evidence
  const { verdict } = record
  const arrangement = trade.arrangement[seal.arrangement].toLowerCase()
  return (
    <Page frame={frame} title={w.orderTitle(workOrder.number)} width="wide">
      <PageHead
        over={[customer.name, equipment?.tag].filter((one) => one !== undefined).join(' · ')}
        title={w.orderTitle(workOrder.number)}
        lead={w.sealLine(seal.serial, arrangement, numberText(seal.shaftDiameterMm))}
      >
        <div class="cluster">
          {workOrder.stage === 'handed-over' ? (
            <ButtonLink href="#decision" label={w.toDecision} />
          ) : null}
          <VerdictMark size="large" verdict={verdict} word={trade.overall[verdict]} />
        </div>
      </PageHead>
      <div class="stack">
        {conflict === undefined ? null : (
          <Conflict sentence={conflict} wrote={props.form?.reason ?? ''} />
        )}
        <OrderFacts evidence={evidence} />
        <section class="card" aria-labelledby="rule">
          <h2 id="rule">{words.agreedRules.title}</h2>
          <AgreedRuleText
            rule={evidence.agreedRule}
            shareAtMost={evidence.limitSet.uncertaintyShareAtMost}
          />
        </section>
        <Doubts doubts={evidence.doubts} />
        <EvidenceResults {...props} />
        <OrderRuns runs={evidence.dynamicRuns} orderNumber={workOrder.number} />
        <CertifiedFindings findings={record.findings ?? []} parts={record.parts ?? []} />
        <CertifiedSurveys surveys={record.surveys ?? []} orderNumber={workOrder.number} />
        <ReaderSpreads evidence={evidence} />
        {record.lapping.length === 0 ? null : (
          <section class="card" aria-labelledby="lapping">
            <h2 id="lapping">{words.lapping.certificate.heading}</h2>
            <LapLines lapping={record.lapping} />
            <p class="soft">{words.lapping.without}</p>
          </section>
        )}
        {hasStripRecords(record) ? (
          <section class="card">
            <h2>{words.stripRecords.certificate.heading}</h2>
            <StripLines {...record} />
          </section>
        ) : null}
        <div class="split">
          <div class="stack">
            <RecordCorrections corrections={record.corrections} />
            <EvidenceCourse evidence={evidence} />
            <ButtonRow>
              <ButtonLink href={`/work-orders/${workOrder.number}`} label={w.toWorkOrder} />
            </ButtonRow>
          </div>
          <DecisionCard {...props} />
        </div>
      </div>
    </Page>
  )
}

/** Records made with an instrument that was found out of tolerance since. */
const Doubts: FC<{ doubts: readonly Doubt[] }> = ({ doubts }) => {
  const open = doubts.filter((one) => one.answer !== 'stands')
  const ids = [...new Set(open.map((one) => one.calibrationId))]
  if (ids.length === 0) return null
  return (
    <Caution sign={words.chrome.caution} title={w.doubtTitle}>
      {ids.map((id) => {
        const one = open.find((doubt) => doubt.calibrationId === id)
        return one === undefined ? null : (
          <p>
            <a href={`/instruments/${one.instrumentId}/touched?calibration=${id}`}>
              {w.doubt(one.instrumentNumber, one.foundOn)}
            </a>
          </p>
        )
      })}
    </Caution>
  )
}

const Conflict: FC<{ sentence: string; wrote: string }> = ({ sentence, wrote }) => (
  <div class="faults" role="alert">
    <h2 class="faults-title">{w.notDone}</h2>
    <p>{sentence}</p>
    {wrote === '' ? null : <p class="soft">{w.youWrote(wrote)}</p>}
    <p>
      <a href="#decision">{w.seeBelow}</a>
    </p>
  </div>
)

const OrderFacts: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const { workOrder, seal, limitSet } = evidence
  const { name, version, datedOn } = limitSet
  const said = (text: string) => (text === '' ? words.chrome.notStated : text)
  const drawing = [seal.drawing, seal.drawingRevision].filter((one) => one !== '').join(' ')
  const fluid = workOrder.lastFluid === '' ? '' : ` (${workOrder.lastFluid})`
  return (
    <Facts
      pairs={[
        { label: w.customerOrder, value: said(workOrder.customerOrder) },
        { label: w.drawing, value: said(drawing) },
        { label: w.receivedAt, value: dayText(workOrder.receivedAt) },
        { label: w.dueOn, value: workOrder.dueOn ?? words.chrome.notStated },
        { label: w.reasonForRemoval, value: said(workOrder.reasonForRemoval) },
        {
          label: w.decontamination,
          value: `${trade.decontamination[workOrder.decontamination]}${fluid}`,
        },
        {
          label: w.limitSet,
          value: (
            <span>
              <a class="link-line" href={`/limit-sets/${limitSet.id}`}>
                {w.limitSetName(name, version, datedOn)}
              </a>
              <a class="link-line" href={`/work-orders/${workOrder.number}/limits`}>
                {words.limitReasons.link}
              </a>
            </span>
          ),
        },
      ]}
    />
  )
}
