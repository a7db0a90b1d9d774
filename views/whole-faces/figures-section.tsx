import type { FC } from 'hono/jsx'
import type { FaceFigureChange } from '../../src/domain/face-figure-changes.ts'
import { DataTable } from '../components/data-table.tsx'
import { words } from '../words/en.ts'
import type { ComparedPair } from './page-props.ts'
import { changeText, umText } from './um-text.ts'

/** All figures of both with their change, and the rule by which they were compared. */
export const FiguresSection: FC<{ pair: ComparedPair }> = ({ pair }) => {
  const w = words.wholeFaces
  return (
    <section class="stack" aria-labelledby="figures-title">
      <div class="section-head">
        <h2 id="figures-title">{w.tableTitle}</h2>
      </div>
      <DataTable
        caption={w.tableTitle}
        isCaptionHidden
        columns={[
          { label: w.table.figure },
          { label: w.earlier, kind: 'number' },
          { label: w.later, kind: 'number' },
          { label: w.table.change, kind: 'number' },
        ]}
        rows={pair.comparison.changes.map((one) => ({
          cells: [w.figure[one.name], ...valuesOf(one)],
        }))}
      />
      <p class="small soft">{w.tableHint}</p>
      <p class="small soft">{w.rule}</p>
    </section>
  )
}

function valuesOf({ firstUm, secondUm, changeUm, expandedUm }: FaceFigureChange): string[] {
  const w = words.wholeFaces
  const text = (um: number | null, expanded: number | undefined, print: (um: number) => string) => {
    if (um === null) return w.notKnown
    return expanded === undefined ? w.um(print(um)) : w.plusMinus(print(um), umText(expanded))
  }
  return [
    text(firstUm, expandedUm?.[0], umText),
    text(secondUm, expandedUm?.[1], umText),
    text(changeUm, expandedUm?.[2], changeText),
  ]
}
