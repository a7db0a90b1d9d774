import type { FC } from 'hono/jsx'
import type { CertifiedInstrument } from '../src/domain/certificate.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { words } from './words/en.ts'

const w = words.inspection

/**
 * The instruments behind a result, with what stood on their labels on the day of use: two lines
 * where one was calibrated between two uses of the same day.
 */
export const InstrumentsOnDay: FC<{
  instruments: readonly CertifiedInstrument[]
  numbers: readonly string[]
  day: string
}> = ({ instruments, numbers, day }) => (
  <ul class="stack-tight instruments-on-day">
    {numbers.map((number) => {
      const uses = instruments.filter((one) => one.number === number && one.usedOn.includes(day))
      return (
        <li>
          <span class="strong">{number}</span> {uses[0]?.name}
          {uses.map((use) => (
            <Label use={use} />
          ))}
        </li>
      )
    })}
  </ul>
)

const Label: FC<{ use: CertifiedInstrument }> = ({ use }) => {
  const isGood = use.status === 'in-calibration'
  const status = words.trade.calibrationStatus[use.status]
  const due = use.dueOn === null ? null : isGood ? w.dueUntil(use.dueOn) : w.wasDue(use.dueOn)
  const day = due === null ? null : <span class="unbroken">{due}</span>
  if (isGood) {
    return (
      <p class="cell-detail">
        {status} {day}
      </p>
    )
  }
  return (
    <>
      <p>
        <VerdictMark verdict="missing" word={status} />
      </p>
      {day === null ? null : <p class="cell-detail">{day}</p>}
    </>
  )
}
