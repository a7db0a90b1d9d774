import type { FC } from 'hono/jsx'
import type { UseException } from '../src/domain/use-exception.ts'
import { DataTable } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { Cell } from './order-record.tsx'
import { words } from './words/en.ts'

const marks = { open: 'open', allowed: 'missing', declined: 'refused' } as const

/** Every instrument that was asked for in spite of a fault; nothing where none was. */
export const OrderExceptions: FC<{
  exceptions: readonly UseException[]
  /** Where open ones are answered, for who may look there. */
  answersHref: string | null
}> = ({ exceptions, answersHref }) => {
  const w = words.exceptions
  if (exceptions.length === 0) return null
  return (
    <section id="exceptions" class="records" aria-labelledby="exceptions-title">
      <div class="section-head">
        <h2 id="exceptions-title">{w.sectionTitle}</h2>
      </div>
      <DataTable
        caption={w.sectionTitle}
        isCaptionHidden
        columns={[
          { label: w.columns.instrument },
          { label: w.columns.state },
          { label: w.columns.asked },
          { label: w.columns.answered },
        ]}
        rows={exceptions.map((one) => ({ cells: cellsOf(one, answersHref) }))}
      />
      <p class="small soft">{w.caution}</p>
    </section>
  )
}

function cellsOf(one: UseException, answersHref: string | null) {
  const w = words.exceptions
  const { answer } = one
  const state = answer?.answer ?? 'open'
  const until = answer?.validUntil ?? null
  return [
    <Cell details={[w.faults[one.fault]]}>
      <a href={`/instruments/${one.instrumentId}`}>{one.instrumentNumber}</a>
    </Cell>,
    <Cell details={[until === null ? null : w.until(until)]}>
      <VerdictMark verdict={marks[state]} word={w.states[state]} />
    </Cell>,
    <Cell details={[w.by(one.askedByName, minuteText(one.askedAt))]}>{one.reason}</Cell>,
    answer === null ? (
      answersHref && <a href={answersHref}>{w.toAnswers}</a>
    ) : (
      <Cell details={[w.by(answer.byName, minuteText(answer.at))]}>{answer.reason}</Cell>
    ),
  ]
}
