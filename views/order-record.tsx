import type { Child, FC } from 'hono/jsx'
import type { Judged } from '../src/domain/judged.ts'
import type { ShownResultKind } from '../src/domain/shown-result.ts'
import { coverageFactorText } from '../src/domain/uncertain-figure.ts'
import type { Uncertainty } from '../src/domain/uncertainty.ts'
import { limitText } from './figures/limit-text.ts'
import { minuteText } from './figures/time-text.ts'
import { words } from './words/en.ts'

type Recorded = {
  readonly recordedByName: string
  readonly recordedAt: string
  readonly replacesId: number | null
  readonly note: string
}

/** What took a record's place: who, when and why. */
export type Replacement = {
  readonly recordedByName: string
  readonly recordedAt: string
  readonly reason: string
}

/** What stands in a cell first, and small lines below it; empty ones are left out. */
export const Cell: FC<{ children: Child; details: readonly Child[] }> = (props) => (
  <>
    {props.children}
    {props.details
      .filter((one) => one !== '' && one !== null)
      .map((one) => (
        <p class="cell-detail">{one}</p>
      ))}
  </>
)

/** Who recorded it and when, the note, and what took its place. */
export const RecordedBy: FC<{ record: Recorded; replacement: Replacement | null }> = (props) => {
  const { record, replacement } = props
  const w = words.workOrders
  return (
    <Cell
      details={[
        <span class="when">{minuteText(record.recordedAt)}</span>,
        record.note,
        record.replacesId === null ? null : w.replaces,
        replacement === null ? null : (
          <strong>
            {w.replacedBy(
              replacement.recordedByName,
              minuteText(replacement.recordedAt),
              replacement.reason,
            )}
          </strong>
        ),
      ]}
    >
      {record.recordedByName}
    </Cell>
  )
}

/** Leads to the page of one result, where its uncertainty is shown line by line. */
export const ResultLink: FC<{
  orderNumber: string
  kind: ShownResultKind
  id: number
  uncertainty: Pick<Uncertainty, 'coverageFactor'> | null
  /** What it is a result of, and when it was recorded, for who hears the link alone. */
  label: string
  at: string
}> = ({ orderNumber, kind, id, uncertainty, label, at }) => {
  const w = words.results
  const text =
    uncertainty === null ? w.link : w.linkWith(coverageFactorText(uncertainty.coverageFactor))
  return (
    <a
      href={`/work-orders/${orderNumber}/results/${kind}/${id}`}
      aria-label={w.linkLabel(text, label, minuteText(at))}
    >
      {text}
    </a>
  )
}

/** Strikes what no longer holds; it stays legible. */
export const Struck: FC<{ isReplaced: boolean; children: Child }> = ({ isReplaced, children }) =>
  isReplaced ? <s>{children}</s> : <span>{children}</span>

/** The limit a result is held against, in the unit of the result. */
export function limitLine({ limit }: Judged): string {
  return limit === null ? words.workOrders.noLimit : limitText(limit)
}
