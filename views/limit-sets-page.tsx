import type { FC } from 'hono/jsx'
import type { LimitSet } from '../src/domain/limit-set.ts'
import { ButtonLink } from './components/button-link.tsx'
import { ButtonRow } from './components/button-row.tsx'
import { DataTable } from './components/data-table.tsx'
import { EmptyState } from './components/empty-state.tsx'
import { PageHead } from './components/page-head.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

/** Every limit set, newest first; where there is none, the way to the first one. */
export const LimitSetsPage: FC<{
  frame: Frame
  sets: readonly LimitSet[]
  /** Offered to new work orders; null where there is none. */
  offeredId: number | null
  mayWrite: boolean
}> = ({ frame, sets, offeredId, mayWrite }) => {
  const w = words.limitSets
  return (
    <Page frame={frame} title={w.title}>
      <PageHead title={w.title} lead={w.lead}>
        {mayWrite && sets.length > 0 ? (
          <ButtonLink href="/limit-sets/new" label={w.startAnother} />
        ) : null}
      </PageHead>
      {sets.length === 0 ? (
        <EmptyState title={w.none} text={mayWrite ? w.noneText : `${w.noneText} ${w.askFor}`}>
          {mayWrite ? (
            <ButtonRow>
              <ButtonLink href="/limit-sets/new" label={w.start} kind="main" />
            </ButtonRow>
          ) : null}
        </EmptyState>
      ) : (
        <SetTable sets={sets} offeredId={offeredId} />
      )}
    </Page>
  )
}

const SetTable: FC<{ sets: readonly LimitSet[]; offeredId: number | null }> = (props) => {
  const { sets, offeredId } = props
  const w = words.limitSets
  const { column } = w
  return (
    <DataTable
      caption={w.caption}
      isCaptionHidden
      columns={[
        { label: column.name },
        { label: column.version, kind: 'number' },
        { label: column.datedOn },
        { label: column.limits, kind: 'number' },
        { label: column.directions, kind: 'number' },
        { label: column.note },
      ]}
      rows={sets.map((one) => ({
        cells: [
          <>
            <a href={`/limit-sets/${one.id}`}>{one.name}</a>
            {one.id === offeredId ? (
              <div>
                <VerdictMark verdict="pass" word={w.offered} />
              </div>
            ) : null}
          </>,
          one.version,
          <span class="number">{one.datedOn}</span>,
          one.limits.length,
          one.directionsRequiredCount,
          one.note === '' ? <span class="soft">{w.noNote}</span> : one.note,
        ],
      }))}
    />
  )
}
