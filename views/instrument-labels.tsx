import type { FC } from 'hono/jsx'
import type { InstrumentUse } from '../src/domain/instrument.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { dayText } from './figures/time-text.ts'
import { words } from './words/en.ts'

const w = words.inspection

/** The instruments behind a result, with what stood on their labels on the day of use. */
export const InstrumentLabels: FC<{ uses: readonly InstrumentUse[] }> = ({ uses }) => (
  <ul class="cluster plain-list">
    {uses.map((use) => (
      <li>
        <span class="strong">{use.number}</span> <Label use={use} />
      </li>
    ))}
  </ul>
)

const Label: FC<{ use: InstrumentUse }> = ({ use }) => {
  const { status, dueOn, exception } = use
  const isGood = status === 'in-calibration'
  const state = words.trade.calibrationStatus[status]
  const due = dueOn === null ? '' : isGood ? w.dueUntil(dueOn) : w.wasDue(dueOn)
  const label = [state, due].filter((one) => one !== '').join(' ')
  if (isGood && exception === undefined) return label
  return (
    <>
      {isGood ? label : <VerdictMark verdict="missing" word={label} />}
      {exception === undefined ? null : (
        <p>
          {w.exception(exception.allowedByName, dayText(exception.allowedAt), exception.reason)}
        </p>
      )}
    </>
  )
}
