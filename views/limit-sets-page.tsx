import type { FC } from 'hono/jsx'
import type { LimitSet } from '../src/domain/limit-set.ts'
import type { LimitSetStanding } from '../src/domain/limit-set-standing.ts'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { LimitStandingMark } from './limit-standing-mark.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

export type LimitSetLine = {
  readonly set: LimitSet
  readonly standing: LimitSetStanding
  /** `first`: what a new work order takes where nothing else is chosen. */
  readonly offered: 'no' | 'yes' | 'first'
}

/** Every limit set by name, newest version first; where there is none, the way to the first one. */
export const LimitSetsPage: FC<{
  frame: Frame
  lines: readonly LimitSetLine[]
  mayWrite: boolean
}> = ({ frame, lines, mayWrite }) => {
  const w = words.limitSets
  const names = [...new Set(lines.map((one) => one.set.name))]
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead}>
        {lines.length > 0 ? (
          <ButtonRow>
            <ButtonLink href="/limit-sets/compare" label={w.compare} />
            {mayWrite ? <ButtonLink href="/limit-sets/new" label={w.startAnother} /> : null}
          </ButtonRow>
        ) : null}
      </PageHead>
      {lines.length === 0 ? (
        <EmptyState title={w.none} text={mayWrite ? w.noneText : `${w.noneText} ${w.askFor}`}>
          {mayWrite ? (
            <ButtonRow>
              <ButtonLink href="/limit-sets/new" label={w.start} kind="main" />
            </ButtonRow>
          ) : null}
        </EmptyState>
      ) : (
        <div class="stack-loose">
          {lines.some((one) => one.offered !== 'no') ? null : (
            <p>
              <VerdictMark verdict="missing" word={w.noneInForce} />
            </p>
          )}
          {names.map((name) => (
            <Versions name={name} lines={lines.filter((one) => one.set.name === name)} />
          ))}
        </div>
      )}
    </Page>
  )
}

const Versions: FC<{ name: string; lines: readonly LimitSetLine[] }> = ({ name, lines }) => {
  const w = words.limitSets
  const { column } = w
  return (
    <section>
      <div class="section-head">
        <h2>{name}</h2>
      </div>
      <DataTable
        caption={w.versionsOf(name)}
        isCaptionHidden
        columns={[
          { label: column.version },
          { label: column.state },
          { label: column.datedOn },
          { label: column.limits, kind: 'number' },
          { label: column.note },
        ]}
        rows={lines.map(({ set, standing, offered }) => ({
          ...(standing === 'retired' || standing === 'replaced' ? { mark: 'quiet' as const } : {}),
          cells: [
            <a href={`/limit-sets/${set.id}`}>{words.workOrders.limitSet(name, set.version)}</a>,
            <>
              <LimitStandingMark standing={standing} set={set} />
              {offered === 'no' ? null : (
                <p class="cell-detail">{offered === 'first' ? w.offeredFirst : w.offered}</p>
              )}
            </>,
            <span class="number">{set.datedOn}</span>,
            set.limits.length,
            set.note === '' ? <span class="soft">{w.noNote}</span> : set.note,
          ],
        }))}
      />
    </section>
  )
}
