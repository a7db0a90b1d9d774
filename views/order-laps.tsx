import type { Child, FC } from 'hono/jsx'
import type { CertifiedLapping } from '../src/domain/certified-lapping.ts'
import { figure } from '../src/domain/figure.ts'
import type { LapRow } from '../src/domain/lap-rows.ts'
import type { FaceHeight } from '../src/domain/lap-steps.ts'
import { DataTable } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { PlateCell } from './lap-cycles/plate-cell.tsx'
import { LapLines } from './lap-lines.tsx'
import { Cell, RecordedBy, Struck } from './order-record.tsx'
import { words } from './words/en.ts'

type Props = {
  readonly rows: readonly LapRow[]
  readonly lapping: readonly CertifiedLapping[]
  /** Where a correction is begun; null where this person may record none. */
  readonly correctHref: string | null
}

/** Every lap cycle, oldest first, below what they left of each face. */
export const OrderLaps: FC<Props> = (props) => {
  const w = words.lapping
  return (
    <section id="lapping" class="records" aria-labelledby="lapping-title">
      <div class="section-head">
        <h2 id="lapping-title">{w.sectionTitle}</h2>
      </div>
      {props.rows.length === 0 ? (
        <p class="soft">{w.none}</p>
      ) : (
        <div class="stack">
          <LapLines lapping={props.lapping} />
          <LapTable {...props} />
          <p class="small soft">{w.without}</p>
        </div>
      )}
    </section>
  )
}

const LapTable: FC<Props> = ({ rows, correctHref }) => {
  const { columns, sectionTitle } = words.lapping
  const act = { label: words.workOrders.measured.act, kind: 'act', isLabelHidden: true } as const
  return (
    <DataTable
      caption={sectionTitle}
      isCaptionHidden
      columns={[
        { label: columns.cycle },
        { label: columns.plate },
        { label: columns.height, kind: 'number' },
        { label: columns.removed, kind: 'number' },
        { label: columns.left },
        { label: columns.recorded },
        ...(correctHref === null ? [] : [act]),
      ]}
      rows={rows.map((row) => ({
        mark: markOf(row),
        cells: [
          ...cellsOf(row),
          ...(correctHref === null ? [] : [<CorrectLap row={row} href={correctHref} />]),
        ],
      }))}
    />
  )
}

function cellsOf(row: LapRow): Child[] {
  const { cycle, step, face, replacedBy } = row
  const w = words.lapping
  const isReplaced = step === null
  return [
    <Cell
      details={[
        words.trade.faceKind[face],
        cycle.isNewRing ? w.isNewRing : null,
        isReplaced ? words.workOrders.replaced : null,
      ]}
    >
      {step === null ? <s>{w.act}</s> : w.cycleNumber(step.number)}
    </Cell>,
    <PlateCell cycle={cycle} />,
    <Heights row={row} />,
    <Removed row={row} />,
    <Left row={row} />,
    <RecordedBy record={cycle} replacement={replacedBy} />,
  ]
}

const Heights: FC<{ row: LapRow }> = ({ row: { cycle, step } }) => {
  const w = words.lapping
  if (step === null) {
    const { heightBeforeMm: before, heightAfterMm: after } = cycle
    const said = (mm: number | null) => (mm === null ? w.notRead : mmText(mm))
    return <Struck isReplaced>{w.heights(said(before), said(after))}</Struck>
  }
  if (step.before === null && step.after === null) return <span class="soft">{w.noHeight}</span>
  const isReckoned = step.after !== null && !step.after.isRead
  return (
    <Cell details={[isReckoned ? w.reckoned : null]}>
      {w.heights(heightText(step.before), heightText(step.after))}
    </Cell>
  )
}

const Removed: FC<{ row: LapRow }> = ({ row: { cycle, step } }) => {
  const w = words.lapping
  const um = step === null ? cycle.stockUm : step.removedUm
  const { plannedStockUm } = cycle
  return (
    <Cell details={[plannedStockUm === null ? null : w.planned(stockText(plannedStockUm))]}>
      <Struck isReplaced={step === null}>
        {um === null ? w.removedUnknown : w.removed(stockText(um))}
      </Struck>
    </Cell>
  )
}

const Left: FC<{ row: LapRow }> = ({ row: { step, marginMm, standing } }) => {
  const { lapping: w, chrome } = words
  if (step === null) return null
  if (step.after === null) return <span class="soft">{w.noHeight}</span>
  if (marginMm === null) return <span class="soft">{chrome.notStated}</span>
  const size = mmText(marginMm).replace('−', '')
  if (standing !== 'below') return <span>{w.aboveMinimum(size)}</span>
  return (
    <Cell details={[w.belowMinimum(size)]}>
      <VerdictMark verdict="fail" word={w.standing.below} />
    </Cell>
  )
}

const CorrectLap: FC<{ row: LapRow; href: string }> = ({ row, href }) => {
  const w = words.workOrders
  const { step, face, cycle } = row
  if (step === null) return null
  const label = words.lapping.correct(words.trade.faceKind[face], step.number)
  return (
    <a href={`${href}?replaces=${cycle.id}`} aria-label={`${w.correct}: ${label}`}>
      {w.correct}
    </a>
  )
}

function markOf({ step, standing }: LapRow): 'quiet' | 'stop' | undefined {
  if (step === null) return 'quiet'
  return standing === 'below' ? 'stop' : undefined
}

function heightText(height: FaceHeight | null): string {
  const w = words.lapping
  if (height === null) return w.notRead
  const text = mmText(height.mm)
  return height.unknownCount > 0 ? w.atMost(text) : text
}

function mmText(mm: number): string {
  return figure(mm, { decimals: 3 }).text
}

function stockText(um: number): string {
  return figure(um, { decimals: 1 }).text
}
