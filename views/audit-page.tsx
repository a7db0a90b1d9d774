import type { FC } from 'hono/jsx'
import type { AuditEntry } from '../src/domain/audit.ts'
import { Button } from './components/button.tsx'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { Facts } from './components/facts.tsx'
import { Field } from './components/field.tsx'
import { PageHead } from './components/page-head.tsx'
import { Pager } from './components/pager.tsx'
import { jsonText } from './figures/json-text.ts'
import { minuteText } from './figures/time-text.ts'
import { type Frame, Page } from './page.tsx'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

export type AuditPageProps = {
  readonly frame: Frame
  readonly entries: readonly AuditEntry[]
  /** '' for every subject. */
  readonly subject: string
  readonly isFirstPage: boolean
  readonly nextCursor: string | null
}

/** The trail, newest first; each line opens to what was recorded and its place in the chain. */
export const AuditPage: FC<AuditPageProps> = (props) => {
  const { frame, entries, subject, isFirstPage, nextCursor } = props
  const w = words.people.audit
  const position = w.position(entries.length, entries[0]?.id ?? 0, entries.at(-1)?.id ?? 0)
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead} />
      <div class="stack">
        <p>
          {w.check} <code>{w.checkCommand}</code>
        </p>
        <SubjectFilter subject={subject} />
        {entries.length === 0 ? (
          <EmptyState title={w.none} text={w.noneText} />
        ) : (
          <ul class="job-list">
            {entries.map((entry) => (
              <Line entry={entry} isOnlySubject={subject !== ''} />
            ))}
          </ul>
        )}
        <Pager
          label={w.pagerLabel}
          position={position}
          previous={isFirstPage ? undefined : { href: address(subject, ''), label: w.newest }}
          next={
            nextCursor === null ? undefined : { href: address(subject, nextCursor), label: w.older }
          }
        />
      </div>
    </Page>
  )
}

const SubjectFilter: FC<{ subject: string }> = ({ subject }) => {
  const w = words.people.audit
  return (
    <search>
      <form method="get" action="/audit" aria-label={w.filterTitle} class="filter-line">
        <Field
          name="subject"
          label={w.subject}
          hint={w.subjectHint}
          value={subject}
          type="search"
          width="short"
        />
        <ButtonRow>
          <Button label={w.filter} />
          {subject === '' ? null : <ButtonLink href="/audit" label={w.clear} kind="quiet" />}
        </ButtonRow>
      </form>
    </search>
  )
}

const Line: FC<{ entry: AuditEntry; isOnlySubject: boolean }> = ({ entry, isOnlySubject }) => {
  const w = words.people.audit
  return (
    <li class="job" id={`line-${entry.id}`}>
      <details class="fold">
        <summary>
          <span class="audit-line">
            <span class="soft number">{minuteText(entry.at)}</span>
            <span>
              {entry.actor} {tradeWord(words.trade.auditAct, entry.act)}
            </span>
            <span class="strong number">{entry.subject}</span>
          </span>
        </summary>
        <div class="fold-body stack">
          {isOnlySubject ? null : (
            <p>
              <a href={address(entry.subject, '')}>{w.only}</a>
            </p>
          )}
          <section class="audit-detail" aria-label={w.detail(entry.id)} tabindex={0}>
            <pre>{jsonText(entry.detail)}</pre>
          </section>
          <Facts
            layout="rows"
            pairs={[
              { label: w.hash, value: <code>{entry.hash}</code> },
              { label: w.previousHash, value: <code>{entry.previousHash}</code> },
            ]}
          />
        </div>
      </details>
    </li>
  )
}

function address(subject: string, cursor: string): string {
  const query = new URLSearchParams({
    ...(subject === '' ? {} : { subject }),
    ...(cursor === '' ? {} : { cursor }),
  }).toString()
  return query === '' ? '/audit' : `/audit?${query}`
}
