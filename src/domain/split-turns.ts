import { distinctAngles } from '../science/runout/distinct-angles.ts'
import type { NewSurveyReading } from './parse-survey-readings.ts'

/** One reading in the order in which it was read. */
export type TurnPoint = { readonly angleDeg: number; readonly um: number; readonly typed: string }

export type Turns = {
  /** Of one turn, from 0 to below 360, in the order of reading. */
  readonly anglesDeg: readonly number[]
  readonly turnsCount: number
  /** Whether each turn ends with a reading at its first position. */
  readonly isClosed: boolean
  readonly readings: readonly NewSurveyReading[]
}

const turned = (deg: number) => ((deg % 360) + 360) % 360
const isSame = (a: number, b: number) => distinctAngles([a, b]).length === 1

/**
 * Splits readings into turns: each begins where the first angle comes again. Every turn may end with
 * a closing reading of its own, or the last alone; where the needle went on without a stop, the first
 * reading of a turn closes the one before it. Null where they make no whole turns.
 */
export function splitTurns(points: readonly TurnPoint[]): Turns | null {
  const first = points[0]?.angleDeg ?? 0
  const again = points.findIndex((one, i) => i > 0 && isSame(one.angleDeg, first))
  const count = again === -1 ? points.length : again
  const anglesDeg = points.slice(0, count).map((one) => turned(one.angleDeg))
  if (distinctAngles(anglesDeg).length < count) return null
  const isAt = (index: number, position: number) =>
    isSame(points[index]?.angleDeg ?? Number.NaN, anglesDeg[position % count] as number)
  const fits = (perTurn: number) => points.every((_, i) => isAt(i, i % perTurn))
  const total = points.length
  if (total % (count + 1) === 0 && fits(count + 1)) {
    return turnsOf(anglesDeg, total / (count + 1), (turn, position) => {
      return points[turn * (count + 1) + position] as TurnPoint
    })
  }
  if (!fits(count)) return null
  const isClosed = total % count === 1
  if (total % count > 1) return null
  return turnsOf(
    anglesDeg,
    Math.floor(total / count),
    (turn, position) => points[turn * count + position] as TurnPoint,
    isClosed,
  )
}

function turnsOf(
  anglesDeg: readonly number[],
  turnsCount: number,
  at: (turnIndex: number, positionIndex: number) => TurnPoint,
  isClosed = true,
): Turns {
  const perTurn = anglesDeg.length + (isClosed ? 1 : 0)
  const readings = Array.from({ length: turnsCount * perTurn }, (_, i) => {
    const [turnIndex, positionIndex] = [Math.floor(i / perTurn), i % perTurn]
    const { um, typed } = at(turnIndex, positionIndex)
    return { planeIndex: 0, turnIndex, positionIndex, indicator: 'first' as const, um, typed }
  })
  return { anglesDeg, turnsCount, isClosed, readings }
}
