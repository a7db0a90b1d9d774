import type { FC } from 'hono/jsx'
import type { BenchLine } from '../src/domain/bench.ts'
import type { VerdictKind } from '../src/plots/verdict-shape.ts'
import { ButtonLink } from './components/button-link.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { FindOrder } from './find-order.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

/** A line of the bench, with the inspector's last word where the order was refused. */
export type BenchJob = BenchLine & {
  readonly refusal: { readonly byName: string; readonly reason: string } | null
}

export type BenchProps = {
  readonly frame: Frame
  readonly today: string
  readonly failed: readonly BenchJob[]
  readonly dueSoon: readonly BenchJob[]
  readonly waiting: readonly BenchJob[]
  readonly inspection: readonly BenchJob[]
  readonly find: { readonly typed: string; readonly isEmpty: boolean }
}

/** What waits, what is due, what failed: the technician's first page. */
export const BenchPage: FC<BenchProps> = (props) => {
  const { frame, today, failed, dueSoon, waiting, inspection, find } = props
  const w = words.bench
  const isEmpty = [failed, dueSoon, waiting, inspection].every((list) => list.length === 0)
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title}>
        <ButtonLink href="/work-orders/new" label={w.receive} />
      </PageHead>
      <div class="stack-loose">
        <FindOrder {...find} />
        {isEmpty ? (
          <EmptyState title={w.emptyTitle} text={w.emptyText} />
        ) : (
          <>
            <Jobs id="failed" title={w.failed} empty={w.failedEmpty} jobs={failed} today={today} />
            <Jobs id="due" title={w.due} empty={w.dueEmpty} jobs={dueSoon} today={today} />
            <Jobs
              id="waiting"
              title={w.waiting}
              empty={w.waitingEmpty}
              jobs={waiting}
              today={today}
            />
            <Jobs
              id="inspection"
              title={w.inspection}
              empty={w.inspectionEmpty}
              jobs={inspection}
              today={today}
            />
          </>
        )}
      </div>
    </Page>
  )
}

const Jobs: FC<{
  id: string
  title: string
  empty: string
  jobs: readonly BenchJob[]
  today: string
}> = ({ id, title, empty, jobs, today }) => (
  <section aria-labelledby={id}>
    <div class="section-head">
      <h2 id={id}>{title}</h2>
      <span class="soft number">{jobs.length}</span>
    </div>
    {jobs.length === 0 ? (
      <p class="soft">{empty}</p>
    ) : (
      <ul class="job-list">
        {jobs.map((job) => (
          <Job job={job} today={today} />
        ))}
      </ul>
    )}
  </section>
)

const Job: FC<{ job: BenchJob; today: string }> = ({ job, today }) => {
  const w = words.bench
  const places = [job.customerName, job.equipmentTag, job.sealSerial]
  const state = jobState(job, today)
  return (
    <li class="job">
      <a class="job-link" href={`/work-orders/${job.number}`}>
        <span class="job-number number">{job.number}</span>
        <span class="job-what">
          <span class="strong">{nextPhrase(job)}</span>
          <span class="job-detail">{places.filter((one) => one !== null).join(' · ')}</span>
          {job.refusal ? (
            <span class="job-detail">{w.refusedBy(job.refusal.byName, job.refusal.reason)}</span>
          ) : null}
        </span>
        <span class="job-state">
          {state.verdict === undefined ? (
            <span class="soft">{state.word}</span>
          ) : (
            <VerdictMark verdict={state.verdict} word={state.word} />
          )}
        </span>
      </a>
    </li>
  )
}

/** Where everything is recorded and was refused, handing over again would change nothing. */
function nextPhrase({ stage, whatNext }: BenchJob): string {
  const w = words.bench
  return stage === 'refused' && whatNext === 'hand-over' ? w.afterRefusal : w.next[whatNext]
}

/** The one word at the end of a line: the worst of what is known. */
function jobState(job: BenchJob, today: string): { word: string; verdict?: VerdictKind } {
  const w = words.bench
  if (job.stage === 'refused') return { word: w.refused, verdict: 'refused' }
  if (job.isFailing && job.stage !== 'handed-over') return { word: w.fails, verdict: 'fail' }
  if (job.dueOn === null) return { word: w.noDue }
  if (job.isOverdue) return { word: w.overdue(job.dueOn), verdict: 'missing' }
  return { word: job.dueOn === today ? w.dueToday : w.dueOn(job.dueOn) }
}
