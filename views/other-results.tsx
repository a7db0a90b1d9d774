import type { FC } from 'hono/jsx'
import type { OtherResult } from '../src/domain/other-results.ts'
import { DataTable, type Row } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import type { EvidencePageProps } from './evidence-page-props.ts'
import { minuteText } from './figures/time-text.ts'
import { uncertainText } from './figures/uncertain-text.ts'
import { InstrumentLabels } from './instrument-labels.tsx'
import { words } from './words/en.ts'

const w = words.inspection
const { trade } = words

/** What was measured and doesn't count for the release: folded, for who wants to see the way. */
export const OtherResults: FC<EvidencePageProps> = ({ others }) =>
  others.length === 0 ? null : (
    <details class="fold">
      <summary>{w.others(others.length)}</summary>
      <DataTable
        caption={w.others(others.length)}
        isCaptionHidden
        columns={[
          { label: w.otherColumns.measured },
          { label: w.otherColumns.result },
          { label: w.otherColumns.verdict },
          { label: w.otherColumns.instruments },
          { label: w.otherColumns.recorded },
        ]}
        rows={others.map(row)}
      />
    </details>
  )

function row(other: OtherResult): Row {
  const { shown, isOvertaken } = other
  const { judged } = shown
  return {
    mark: 'quiet',
    cells: [
      <>
        {titleOf(other)}
        {shown.note === '' ? null : <p class="cell-detail">{w.noteOf(shown.note)}</p>}
      </>,
      <span class="number">{figureOf(other)}</span>,
      <>
        <VerdictMark verdict={judged.verdict} word={trade.verdict[judged.verdict]} />
        {isOvertaken ? <p class="cell-detail">{overtakenText(other)}</p> : null}
      </>,
      <InstrumentLabels uses={shown.instruments} />,
      <>
        {shown.recordedByName}
        <p class="cell-detail">{minuteText(shown.recordedAt)}</p>
      </>,
    ],
  }
}

function titleOf({ shown, condition }: OtherResult): string {
  const { on, characteristic } = shown
  const { sees } = shown
  const what = sees === null ? trade.characteristic[characteristic] : words.flatnessSees[sees].name
  if (condition === null) return `${w.staticTest}: ${what.toLowerCase()}`
  const where = on === null ? [] : [{ ...trade.componentKind, ...trade.section }[on]]
  const when = condition === 'as-found' ? w.asFound : w.asLeft
  return [...where, what.toLowerCase(), when].join(', ')
}

function figureOf({ shown }: OtherResult): string {
  const { judged, uncertainty } = shown
  if (judged.value === null) return words.chrome.unreadable
  const { value, unit } = uncertainText(judged.characteristic, judged.value, uncertainty)
  return `${value} ${unit}`
}

function overtakenText({ condition }: OtherResult): string {
  return condition === null ? w.overtakenTest : w.overtaken
}
