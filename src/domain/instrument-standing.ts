import type { Instrument, InstrumentUse } from './instrument.ts'
import { instrumentUse } from './instrument-use.ts'

/** A calibration that runs out within so many days is said (our own choice). */
export const calibrationNoticeDays = 30

/** What a list of instruments can be narrowed down to; what needs a look stands first. */
export const instrumentStates = [
  'left-beyond',
  'overdue',
  'never-calibrated',
  'due-soon',
  'in-calibration',
  'withdrawn',
] as const
export type InstrumentState = (typeof instrumentStates)[number]

/** One word for how an instrument stands: what runs out soon is told apart. */
export function instrumentState({ use, isDueSoon }: InstrumentStanding): InstrumentState {
  return isDueSoon ? 'due-soon' : use.status
}

/** An instrument with what its label says on a day. */
export type InstrumentStanding = {
  readonly instrument: Instrument
  readonly use: InstrumentUse
  /** Whole days from the day asked about to the due day; null where it doesn't run out. */
  readonly dueInDays: number | null
  readonly isDueSoon: boolean
}

/**
 * How an instrument stands on a day.
 * @param day calendar day, `2026-11-25`
 */
export function instrumentStanding(instrument: Instrument, day: string): InstrumentStanding {
  const use = instrumentUse(instrument, day)
  const dueInDays =
    use.status === 'in-calibration' && use.dueOn !== null ? daysFrom(day, use.dueOn) : null
  const isDueSoon = dueInDays !== null && dueInDays <= calibrationNoticeDays
  return { instrument, use, dueInDays, isDueSoon }
}

const rank = {
  'left-beyond': 0,
  overdue: 1,
  'never-calibrated': 2,
  'in-calibration': 3,
  withdrawn: 4,
} as const

/** All of them, what needs a look first: beyond its tolerance, overdue, never calibrated. */
export function instrumentStandings(
  instruments: readonly Instrument[],
  day: string,
): readonly InstrumentStanding[] {
  return instruments
    .map((one) => instrumentStanding(one, day))
    .toSorted(
      (a, b) =>
        rank[a.use.status] - rank[b.use.status] ||
        byText(a.use.dueOn ?? '', b.use.dueOn ?? '') ||
        byText(a.use.number, b.use.number),
    )
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** Calendar days have no clock: both are read at midnight UTC, so the difference is whole. */
function daysFrom(day: string, later: string): number {
  return (Date.parse(`${later}T00:00:00Z`) - Date.parse(`${day}T00:00:00Z`)) / 86_400_000
}
