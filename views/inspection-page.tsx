import type { FC } from 'hono/jsx'
import type { CertifiedVerdict } from '../src/domain/certified-results.ts'
import type { HandOver } from '../src/domain/release.ts'
import type { WorkOrderLine } from '../src/domain/work-order-line.ts'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { OpenExceptions, type OpenExceptionsProps } from './use-exceptions.tsx'
import { words } from './words/en.ts'

const w = words.inspection

export type WaitingLine = {
  readonly line: WorkOrderLine
  readonly handOver: HandOver | null
  readonly verdict: CertifiedVerdict
  /** The viewer did part of the work. */
  readonly isOwnWork: boolean
}

export const InspectionPage: FC<{
  frame: Frame
  waiting: readonly WaitingLine[]
  refused: readonly WorkOrderLine[]
  released: readonly WorkOrderLine[]
  exceptions: OpenExceptionsProps
}> = ({ frame, waiting, refused, released, exceptions }) => (
  <Page frame={frame} title={w.title}>
    <PageHead title={w.title} lead={w.lead} />
    <div class="stack-loose">
      <OpenExceptions {...exceptions} />
      <section>
        <div class="section-head">
          <h2>{w.waiting}</h2>
        </div>
        {waiting.length === 0 ? (
          <EmptyState title={w.nothingWaits} text={w.nothingWaitsText} />
        ) : (
          <ul class="job-list">{waiting.map((one) => waitingJob(one))}</ul>
        )}
      </section>
      <Decided title={w.refused} verdict="refused" lines={refused} />
      <Decided title={w.released} verdict="pass" lines={released} />
    </div>
  </Page>
)

function waitingJob({ line, handOver, verdict, isOwnWork }: WaitingLine) {
  return (
    <Job line={line}>
      <span class="job-what">
        {jobTitle(line)}
        <span class="job-detail">
          {handOver === null ? '' : w.handedOverBy(handOver.byName, minuteText(handOver.at))}
          {line.dueOn === null ? '' : ` · ${w.due} ${line.dueOn}`}
        </span>
        {isOwnWork ? <span class="job-detail">{w.yours}</span> : null}
      </span>
      <span class="job-state">
        <VerdictMark verdict={verdict} word={words.trade.overall[verdict]} />
      </span>
    </Job>
  )
}

const Decided: FC<{
  title: string
  verdict: 'pass' | 'refused'
  lines: readonly WorkOrderLine[]
}> = ({ title, verdict, lines }) =>
  lines.length === 0 ? null : (
    <section>
      <div class="section-head">
        <h2>{title}</h2>
      </div>
      <ul class="job-list">
        {lines.map((line) => (
          <Job line={line}>
            <span class="job-what">{jobTitle(line)}</span>
            <span class="job-state">
              <VerdictMark verdict={verdict} word={words.trade.stage[line.stage]} />
            </span>
          </Job>
        ))}
      </ul>
    </section>
  )

const Job: FC<{ line: WorkOrderLine; children?: unknown }> = ({ line, children }) => (
  <li class="job">
    <a class="job-link" href={`/work-orders/${line.number}/inspection`}>
      <span class="job-number">{line.number}</span>
      {children}
    </a>
  </li>
)

function jobTitle(line: WorkOrderLine): string {
  const parts = [line.sealSerial, line.equipmentTag, line.customerName]
  return parts.filter((one) => one !== null).join(' · ')
}
