import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { jumpKind } from './jump-kind.ts'
import { medianStep } from './median-step.ts'

/** What was found odd about the times of a logger, and what was done; nothing is dropped unsaid. */
export const timeEventKinds = [
  'duplicate',
  'conflict',
  'out-of-order',
  'gap',
  'clock-back',
  'clock-forward',
  'jump-unknown',
] as const
export type TimeEventKind = (typeof timeEventKinds)[number]

export interface TimeEvent {
  readonly kind: TimeEventKind
  /** Of the row in the order of the file, from 0. */
  readonly index: number
  /** From the row before it. */
  readonly stepS: number
}

export interface TimeBase {
  /** Rows of one clock without a break of it, in the order of time, by their place in the file. */
  readonly segments: readonly (readonly number[])[]
  readonly events: readonly TimeEvent[]
  /** The usual step; null with one row. */
  readonly stepS: number | null
}

const name = 'timeBase'
/** A longer step than so many usual ones is a gap. */
const mostSteps = 3
const hourS = 3600

/**
 * Brings the rows of a logger into the order of time: one that comes late is put in its place, one
 * that stands twice is named, and where the clock was set a new segment begins.
 *
 * step = median of the rising steps. A step of 0: duplicate, or conflict where the value differs; below
 * 0: out of order where the next row goes on from the old stream, else clock-back; above 3 steps: gap,
 * and where it is an hour more than a step, jumpKind asks the values whether the clock was set forward
 *
 * @param input timesS and values: equally long, one row or more, of any finite numbers; value: the
 *   channel that tells a gap from a clock that was set
 * @returns segments, events and the usual step, s
 * @throws RangeError outside these ranges
 * Validity: one logger. Where values stand still, an hour more may be either: jump-unknown.
 * Source: own rule; local time with daylight saving is the usual cause of hours.
 * @example timeBase({ timesS: [0, 10, 20, 500], values: [0, 1, 2, 50] }).events[0]?.kind // gap
 */
export function timeBase(input: {
  readonly timesS: ArrayLike<number>
  readonly values: ArrayLike<number>
}): TimeBase {
  const { timesS, values } = input
  const count = requireWhole(name, 'count of rows', timesS.length, { from: 1, to: 1e8 })
  requireWhole(name, 'count of values', values.length, { from: count, to: count })
  for (let i = 0; i < count; i++) requireFinite(name, 'timesS', timesS[i] as number)
  const stepS = medianStep(timesS)
  const events: TimeEvent[] = []
  let segment: number[] = [0]
  const segments: number[][] = [segment]
  const begin = (index: number) => {
    segment = [index]
    segments.push(segment)
  }
  for (let index = 1; index < count; index++) {
    const last = segment.at(-1) as number
    const at = timesS[index] as number
    const step = at - (timesS[last] as number)
    const tell = (kind: TimeEventKind) => events.push({ kind, index, stepS: step })
    if (step === 0) {
      tell(values[index] === values[last] ? 'duplicate' : 'conflict')
    } else if (step < 0) {
      const next = timesS[index + 1]
      const goesOn =
        next !== undefined && isNext(next - (timesS[last] as number), stepS) && at >= first(segment)
      if (!goesOn) {
        tell('clock-back')
        begin(index)
      } else if (insert(segment, index)) tell('out-of-order')
      else tell('conflict')
    } else if (stepS !== null && step > mostSteps * stepS) {
      const kind = gapKind({ timesS, values, segment, index, stepS })
      tell(kind)
      if (kind === 'gap') segment.push(index)
      else begin(index)
    } else segment.push(index)
  }
  return { segments, events, stepS }

  function first(rows: readonly number[]): number {
    return timesS[rows[0] as number] as number
  }

  /** False where a row of that time stands already: it is not put in twice. */
  function insert(rows: number[], index: number): boolean {
    const at = timesS[index] as number
    let place = rows.length
    while (place > 0 && (timesS[rows[place - 1] as number] as number) > at) place--
    if (place > 0 && timesS[rows[place - 1] as number] === at) return false
    rows.splice(place, 0, index)
    return true
  }
}

function isNext(step: number, stepS: number | null): boolean {
  return step > 0 && (stepS === null || step <= mostSteps * stepS)
}

function gapKind(at: {
  readonly timesS: ArrayLike<number>
  readonly values: ArrayLike<number>
  readonly segment: readonly number[]
  readonly index: number
  readonly stepS: number
}): TimeEventKind {
  const { timesS, values, segment, index, stepS } = at
  const last = segment.at(-1) as number
  const step = (timesS[index] as number) - (timesS[last] as number)
  if (Math.abs(step - stepS - hourS) > Math.max(2, stepS / 2)) return 'gap'
  const rows = segment.slice(-20)
  return jumpKind({
    timesS: rows.map((one) => timesS[one] as number),
    values: rows.map((one) => values[one] as number),
    stepS: step,
    usualStepS: stepS,
    nextValue: values[index] as number,
  })
}
