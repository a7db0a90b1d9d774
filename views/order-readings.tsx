import type { Child, FC } from 'hono/jsx'
import type { JudgedReading } from '../src/domain/judged-evidence.ts'
import { DataTable } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { numberText } from './figures/number-text.ts'
import { secondResultText } from './figures/result-text.ts'
import { minuteText } from './figures/time-text.ts'
import { uncertainText } from './figures/uncertain-text.ts'
import { Cell, limitLine, RecordedBy, ResultLink, Struck } from './order-record.tsx'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

/** Every reading of the faces, oldest first; what was replaced stays, struck, with the reason. */
export const OrderReadings: FC<{
  readings: readonly JudgedReading[]
  orderNumber: string
  /** Where a correction is begun; null where this person may record none. */
  correctHref: string | null
}> = ({ readings, orderNumber, correctHref }) => {
  const w = words.workOrders
  const m = w.measured
  if (readings.length === 0) return <p class="soft">{w.noReadings}</p>
  return (
    <DataTable
      caption={w.readingsTitle}
      isCaptionHidden
      columns={[
        { label: m.face },
        { label: m.verdict },
        { label: m.result, kind: 'number' },
        { label: m.limit },
        { label: m.seen },
        { label: m.recorded },
        ...(correctHref === null
          ? []
          : [{ label: m.act, kind: 'act', isLabelHidden: true } as const]),
      ]}
      rows={readings.map((one) => ({
        mark: mark(one),
        cells: [
          ...readingCells(one, orderNumber),
          ...(correctHref === null ? [] : [<CorrectReading one={one} href={correctHref} />]),
        ],
      }))}
    />
  )
}

function readingCells(one: JudgedReading, orderNumber: string): Child[] {
  const { reading, judged, replacedBy, afterCycle } = one
  const { trade, workOrders: w } = words
  const isReplaced = replacedBy !== null
  return [
    <Cell
      details={[
        trade.condition[reading.condition],
        afterCycle === null ? null : words.lapping.afterCycle(afterCycle),
      ]}
    >
      {trade.faceKind[reading.faceKind]}
    </Cell>,
    isReplaced ? (
      <VerdictMark verdict="refused" word={w.replaced} />
    ) : (
      <VerdictMark verdict={judged.verdict} word={trade.verdict[judged.verdict]} />
    ),
    <Flatness reading={reading} orderNumber={orderNumber} isReplaced={isReplaced} />,
    limitLine(judged),
    <Seen reading={reading} isReplaced={isReplaced} />,
    <RecordedBy record={reading} replacement={replacedBy} />,
  ]
}

const Flatness: FC<{
  reading: JudgedReading['reading']
  orderNumber: string
  isReplaced: boolean
}> = ({ reading, orderNumber, isReplaced }) => {
  const { flatnessUm: valueUm, uncertainty } = reading
  if (valueUm === null) {
    return <Struck isReplaced={isReplaced}>{words.chrome.unreadable}</Struck>
  }
  const first = uncertainText('flatness', valueUm, uncertainty)
  const second = secondResultText('flatness', valueUm)
  return (
    <Cell
      details={[
        second === undefined ? null : `${second.value} ${second.unit}`,
        words.flatnessSees[reading.sees].short,
        <ResultLink
          orderNumber={orderNumber}
          kind="flatness-reading"
          id={reading.id}
          uncertainty={uncertainty}
          label={words.trade.faceKind[reading.faceKind]}
          at={reading.recordedAt}
        />,
      ]}
    >
      <Struck isReplaced={isReplaced}>{`${first.value} ${first.unit}`}</Struck>
    </Cell>
  )
}

const Seen: FC<{ reading: JudgedReading['reading']; isReplaced: boolean }> = (props) => {
  const { reading, isReplaced } = props
  const { trade } = words
  const counts = reading.directions.map((one) => {
    return `${numberText(one.directionDeg)}${trade.unit.deg}: ${one.bandsTyped}`
  })
  const bands = counts.length === 0 ? '' : `${counts.join(', ')} ${trade.unit.bands}`
  const { wholeFace } = reading
  const isShapeSaid = reading.form === 'undetermined' || wholeFace !== null
  const form = isShapeSaid ? tradeWord(trade.form, reading.form) : ''
  const how = wholeFace === null ? '' : words.wholeFace.kind[wholeFace.source.kind]
  const { unreadableCause: cause } = reading
  const why = cause === null ? '' : trade.unreadableCause[cause]
  return (
    <Cell details={[how, bands, form, why]}>
      <Struck isReplaced={isReplaced}>{trade.pattern[reading.pattern]}</Struck>
    </Cell>
  )
}

const CorrectReading: FC<{ one: JudgedReading; href: string }> = ({ one, href }) => {
  const w = words.workOrders
  if (one.replacedBy !== null || !hasPhotoOrCount(one.reading)) return null
  const { reading } = one
  const label = w.correctLabel(
    words.trade.faceKind[reading.faceKind],
    minuteText(reading.recordedAt),
  )
  return (
    <a href={correctionOf(reading, href)} aria-label={label}>
      {w.correct}
    </a>
  )
}

/** A combined one is corrected by its parts; marks without their photograph by whoever sent them. */
function hasPhotoOrCount({ wholeFace }: JudgedReading['reading']): boolean {
  const source = wholeFace?.source
  return source === undefined || ('photoId' in source && source.photoId !== null)
}

/** A reading of the whole face is corrected on its photograph. */
function correctionOf({ id, wholeFace }: JudgedReading['reading'], href: string): string {
  const source = wholeFace?.source
  if (source === undefined || !('photoId' in source)) return `${href}?replaces=${id}`
  const order = href.replace(/\/flatness\/new$/, '')
  return `${order}/face-photos/${source.photoId}?replaces=${id}`
}

/** As found, a worn face fails and is no news. */
function mark({ reading, judged, replacedBy }: JudgedReading): 'quiet' | 'stop' | undefined {
  if (replacedBy !== null) return 'quiet'
  return judged.verdict === 'fail' && reading.condition === 'as-left' ? 'stop' : undefined
}
