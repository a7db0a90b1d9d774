import type { FC } from 'hono/jsx'
import { DataTable } from '../components/data-table.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { moveText, totalText } from '../words/en/alignment-texts.ts'
import { words } from '../words/en.ts'
import type { AlignmentForm } from './page-props.ts'

/** What to move where, and what to expect; beside it how the result stands now. */
export const MovesSection: FC<{ form: AlignmentForm }> = ({ form }) => {
  const { alignment: w, trade } = words
  const { moves, withoutDirection } = form.alignment
  return (
    <section class="stack">
      <h2>{w.movesTitle}</h2>
      <p class="soft">{w.movesNote}</p>
      {moves.length === 0 ? (
        <p>{w.noMoves}</p>
      ) : (
        <DataTable
          caption={w.movesTitle}
          isCaptionHidden
          columns={[
            { label: w.columns.what },
            { label: w.columns.now, kind: 'number' },
            { label: w.columns.after, kind: 'number' },
            { label: w.columns.act },
          ]}
          rows={moves.map((move) => {
            const own = form.surveys.find((one) => one.measuredValueId === move.measuredValueId)
            const verdict = own?.judged.verdict ?? 'open'
            return {
              cells: [
                <>
                  <p class="strong">{trade.characteristic[move.characteristic]}</p>
                  <VerdictMark verdict={verdict} word={trade.verdict[verdict]} />
                </>,
                w.mm(totalText(move.totalNowUm)),
                w.about(totalText(move.totalAfterUm)),
                moveText(move),
              ],
            }
          })}
        />
      )}
      {withoutDirection.map((one) => (
        <p>{w.withoutDirection(trade.characteristic[one])}</p>
      ))}
    </section>
  )
}
