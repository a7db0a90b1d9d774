import type { FC } from 'hono/jsx'
import type { InstrumentStanding } from '../src/domain/instrument-standing.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { words } from './words/en.ts'

const marks = {
  'left-beyond': 'fail',
  overdue: 'fail',
  'never-calibrated': 'missing',
  'in-calibration': 'pass',
  withdrawn: 'refused',
} as const

/** How an instrument stands today, as shape and word; what runs out soon says when. */
export const InstrumentStatus: FC<{ standing: InstrumentStanding }> = ({ standing }) => {
  const { use, dueInDays, isDueSoon } = standing
  if (isDueSoon && dueInDays !== null) {
    return <VerdictMark verdict="open" word={words.instruments.dueInDays(dueInDays)} />
  }
  return (
    <VerdictMark verdict={marks[use.status]} word={words.trade.calibrationStatus[use.status]} />
  )
}
