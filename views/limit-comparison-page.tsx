import type { FC } from 'hono/jsx'
import type { LimitComparison } from '../src/domain/compare-limits.ts'
import type { Limit, LimitSet } from '../src/domain/limit-set.ts'
import { limitComparison } from '../src/plots/limit-comparison.ts'
import { formatSignificant } from '../src/science/rounding/format-significant.ts'
import { Button } from './components/button.tsx'
import { CheckField } from './components/check-field.tsx'
import { DataTable } from './components/data-table.tsx'
import { PageHead } from './components/page-head.tsx'
import { SvgDrawing } from './components/svg-drawing.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { conditionsText } from './figures/conditions-text.ts'
import { limitText } from './figures/limit-text.ts'
import { type Frame, Page } from './page.tsx'
import { words } from './words/en.ts'

const w = words.limitSets

/** Limits of several sets: a row for each thing that is limited, a column for each set. */
export const LimitComparisonPage: FC<{
  frame: Frame
  /** Every set there is, to choose from. */
  all: readonly LimitSet[]
  chosen: readonly LimitSet[]
  rows: readonly LimitComparison[]
}> = ({ frame, all, chosen, rows }) => (
  <Page frame={frame} title={w.compareTitle} width="wide">
    <PageHead title={w.compareTitle} lead={w.compareLead} />
    <div class="stack-loose">
      <details class="fold" open={chosen.length < 2}>
        <summary>{w.compareChoose}</summary>
        <form method="get" action="/limit-sets/compare" class="fold-body stack">
          <div>
            {all.map((set) => (
              <CheckField
                id={`set-${set.id}`}
                name="sets"
                value={String(set.id)}
                label={words.workOrders.limitSet(set.name, set.version)}
                isChecked={chosen.some((one) => one.id === set.id)}
              />
            ))}
          </div>
          <Button label={w.compareShow} kind="main" />
        </form>
      </details>
      {chosen.length === 0 ? <p>{w.compareNone}</p> : null}
      {chosen.length === 1 ? <p>{w.compareAlone}</p> : null}
      {rows.length === 0 ? null : <Rows chosen={chosen} rows={rows} />}
    </div>
  </Page>
)

const Rows: FC<{ chosen: readonly LimitSet[]; rows: readonly LimitComparison[] }> = (props) => {
  const { chosen, rows } = props
  return (
    <>
      <p class="strong">{w.conflicts(rows.filter((one) => one.kind === 'differs').length)}</p>
      <DataTable
        caption={w.compareCaption}
        isCaptionHidden
        columns={[
          { label: w.limitColumn.conditions },
          ...chosen.map((set) => ({ label: words.workOrders.limitSet(set.name, set.version) })),
          { label: w.differenceColumn },
        ]}
        rows={rows.map((row, index) => ({
          cells: [
            <>
              {titleOf(row)}
              <p class="cell-detail">{conditionsText(row.conditions)}</p>
            </>,
            ...row.cells.map((limits) => <Cell limits={limits} />),
            <Difference row={row} id={`bar-${index}`} />,
          ],
        }))}
      />
    </>
  )
}

const Cell: FC<{ limits: readonly Limit[] }> = ({ limits }) => {
  if (limits.length === 0) return <span class="soft">{w.noLimitThere}</span>
  return (
    <>
      {limits.map((one) => (
        <>
          <p class="number">{limitText(one)}</p>
          <p class="cell-detail">{one.asWritten}</p>
          <p class="cell-detail">{words.trade.limitBasis[one.basis]}</p>
        </>
      ))}
    </>
  )
}

const Difference: FC<{ row: LimitComparison; id: string }> = ({ row, id }) => {
  const { kind, ratio } = row
  if (kind === 'same') return <span>{w.same}</span>
  if (kind === 'alone') return <span class="soft">{w.alone}</span>
  if (ratio === null) return <span>{w.notComparable}</span>
  const limits = row.cells.flat()
  return (
    <>
      <VerdictMark
        verdict="missing"
        word={w.factor(formatSignificant({ value: ratio, digits: 2 }))}
      />
      <SvgDrawing
        id={id}
        title={w.barTitle(titleOf(row))}
        drawing={limitComparison(
          limits.map(({ lower, upper, ...one }) => {
            return { lower, upper, text: limitText({ ...one, lower, upper }).replace(/ \(.*/, '') }
          }),
          240,
        )}
      />
    </>
  )
}

function titleOf({ characteristic }: LimitComparison): string {
  return words.trade.characteristic[characteristic]
}
