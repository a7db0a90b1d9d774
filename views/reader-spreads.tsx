import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import { figure } from '../src/domain/figure.ts'
import { type ReaderSpread, readerSpreads } from '../src/domain/reader-spreads.ts'
import { DataTable } from './components/data-table.tsx'
import { Cell } from './order-record.tsx'
import { words } from './words/en.ts'

/** Faces that several people have read, with mean and spread; nothing where there is none. */
export const ReaderSpreads: FC<{ evidence: Evidence }> = ({ evidence }) => {
  const { readers: w, flatnessSees, trade } = words
  const spreads = readerSpreads(evidence)
  if (spreads.length === 0) return null
  return (
    <section class="readers stack-tight" aria-labelledby="readers-title">
      <h3 id="readers-title">{w.title}</h3>
      <p class="small soft">{w.lead}</p>
      <DataTable
        caption={w.title}
        isCaptionHidden
        columns={[
          { label: w.columns.face },
          { label: w.columns.readings },
          { label: w.columns.mean, kind: 'number' },
          { label: w.columns.spread, kind: 'number' },
          { label: w.columns.count, kind: 'number' },
        ]}
        rows={spreads.map((one) => ({
          cells: [
            <Cell details={[trade.condition[one.condition], flatnessSees[one.sees].short]}>
              {trade.faceKind[one.faceKind]}
            </Cell>,
            <div>
              {one.readings.map(({ recordedByName, flatnessUm }) => (
                <p>{w.reading(recordedByName, umText(flatnessUm ?? Number.NaN))}</p>
              ))}
            </div>,
            umText(one.meanUm),
            <Cell details={[w.spreadDetail]}>{w.spreadOf(umText(one.standardDeviationUm))}</Cell>,
            String(one.readings.length),
          ],
        }))}
      />
    </section>
  )
}

/** Face, count of readers and spread, as an offer says them. */
export function spreadTexts(spread: ReaderSpread): [string, number, string] {
  const { faceKind, condition, readings, standardDeviationUm } = spread
  const { trade } = words
  const face = `${trade.faceKind[faceKind]}, ${trade.condition[condition].toLowerCase()}`
  return [face, readings.length, umText(standardDeviationUm)]
}

function umText(valueUm: number): string {
  return `${figure(valueUm, { decimals: 3 }).text} ${words.trade.unit.um}`
}
