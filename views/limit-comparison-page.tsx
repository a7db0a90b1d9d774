import type { Child, FC } from 'hono/jsx'
import type { ComparisonKind, LimitComparison } from '../src/domain/compare-limits.ts'
import type { Limit, LimitSet } from '../src/domain/limit-set.ts'
import { type ComparedLimit, limitComparison } from '../src/plots/limit-comparison.ts'
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
  const of = (...kinds: readonly ComparisonKind[]) => rows.filter((one) => kinds.includes(one.kind))
  const alone = of('alone')
  return (
    <>
      <Group title={w.compareGroup.differs} chosen={chosen} rows={of('differs')}>
        <p>{w.conflicts(of('differs').length)}</p>
      </Group>
      <Group title={w.compareGroup.alike} chosen={chosen} rows={of('same', 'not-comparable')} />
      {alone.length === 0 ? null : (
        <details class="fold" open={chosen.length === 1}>
          <summary>{w.compareGroup.alone(alone.length)}</summary>
          <div class="fold-body">
            <Table title={w.compareGroup.alone(alone.length)} chosen={chosen} rows={alone} />
          </div>
        </details>
      )}
    </>
  )
}

type GroupProps = {
  readonly title: string
  readonly chosen: readonly LimitSet[]
  readonly rows: readonly LimitComparison[]
}

const Group: FC<GroupProps & { children?: Child }> = ({ children, ...props }) =>
  props.rows.length === 0 && children === undefined ? null : (
    <section class="stack">
      <h2>{props.title}</h2>
      {children}
      {props.rows.length === 0 ? null : <Table {...props} />}
    </section>
  )

/** Only sets that say something in one of the rows have a column. */
const Table: FC<GroupProps> = ({ title, chosen, rows }) => {
  const columns = chosen
    .map((set, place) => ({ set, place }))
    .filter(({ place }) => rows.some((row) => (row.cells[place] ?? []).length > 0))
  return (
    <DataTable
      caption={title}
      isCaptionHidden
      keepsColumns
      columns={[
        { label: w.conditionsColumn },
        { label: w.differenceColumn },
        ...columns.map(({ set, place }) => ({
          label: w.numbered(place + 1, words.workOrders.limitSet(set.name, set.version)),
        })),
      ]}
      rows={rows.map((row) => ({
        cells: [
          <>
            {titleOf(row)}
            <p class="cell-detail">{conditionsText(row.conditions)}</p>
          </>,
          <Difference row={row} />,
          ...columns.map(({ place }) => <Cell limits={row.cells[place] ?? []} />),
        ],
      }))}
    />
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

const Difference: FC<{ row: LimitComparison }> = ({ row }) => {
  const { kind, ratio, compared } = row
  if (kind === 'same') return <span>{w.same}</span>
  if (kind === 'alone') return <span class="soft">{w.alone}</span>
  if (ratio === null) return <span>{w.notComparable}</span>
  const isMixed = compared.length < row.cells.flat().length
  return (
    <>
      <VerdictMark verdict="missing" word={w.factor(ratioText(ratio))} />
      {isMixed ? <p class="cell-detail">{w.isMixed}</p> : null}
      <SvgDrawing
        id={`bar-${row.characteristic}-${compared[0]?.id}`}
        title={w.barTitle(titleOf(row))}
        drawing={limitComparison(barsOf(row), 240)}
      />
    </>
  )
}

/** Numbered as the columns are, so that a bar says whose it is. */
function barsOf({ cells, compared }: LimitComparison): readonly ComparedLimit[] {
  return cells.flatMap((limits, place) =>
    limits
      .filter((one) => compared.includes(one))
      .map((one) => {
        const [plain = ''] = limitText(one).split(' (')
        return { lower: one.lower, upper: one.upper, text: w.numbered(place + 1, plain) }
      }),
  )
}

/** A factor near one keeps the digit that makes it one. */
function ratioText(ratio: number): string {
  return formatSignificant({ value: ratio, digits: ratio < 1.1 ? 3 : 2 })
}

function titleOf({ characteristic }: LimitComparison): string {
  return words.trade.characteristic[characteristic]
}
