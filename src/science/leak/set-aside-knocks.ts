import { requireRange } from '../check/require-range.ts'

/** A reading on a balance at a time. */
export interface MassReading {
  readonly timeS: number
  readonly massG: number
}

/** How many times the scatter of its neighbours a reading has to lie off to be a knock. */
const farOff = 8

/**
 * Parts readings of a balance from lone ones that lie far off the line between their neighbours: a
 * knock, a drop of the collecting tube on the pan. None is thrown away: both lists are given.
 *
 * d_i = m_i - line through i - 1 and i + 1; set aside where |d_i| > 8 x 1.4826 median |d - median d|
 * and larger than |d| of both neighbours
 *
 * @param readings three or more with rising times; fewer are all kept
 * @param stepG of the display, 0 or more: below it nothing is far off
 * @returns kept, and setAside, both in order
 * @throws RangeError for a step below 0
 * Validity: single readings in the middle. A step that stays, such as a cup exchanged, is not found
 *   by it.
 * Source: median absolute deviation, common practice of robust statistics; the factor is ours.
 * @example setAsideKnocks(Array.from({ length: 15 }, (_, i) => ({ timeS: i, massG: i === 7 ? 20 : i })),
 *   0.01).setAside.length // 1
 */
export function setAsideKnocks(
  readings: readonly MassReading[],
  stepG: number,
): { readonly kept: readonly MassReading[]; readonly setAside: readonly MassReading[] } {
  requireRange('setAsideKnocks', 'stepG', stepG, { from: 0, to: 1e9 })
  if (readings.length < 7) return { kept: readings, setAside: [] }
  const off = readings.map((one, i) => offNeighbours(readings[i - 1], one, readings[i + 1]))
  const inner = off.slice(1, -1)
  const middle = median(inner)
  const scatter = 1.4826 * median(inner.map((one) => Math.abs(one - middle)))
  const bound = farOff * Math.max(scatter, stepG)
  const size = (i: number) => Math.abs((off[i] ?? 0) - middle)
  const isKnock = (i: number) =>
    i > 0 &&
    i < readings.length - 1 &&
    size(i) > bound &&
    size(i) > size(i - 1) &&
    size(i) > size(i + 1)
  return {
    kept: readings.filter((_, i) => !isKnock(i)),
    setAside: readings.filter((_, i) => isKnock(i)),
  }
}

function offNeighbours(
  before: MassReading | undefined,
  one: MassReading,
  after: MassReading | undefined,
): number {
  if (before === undefined || after === undefined) return 0
  const share = (one.timeS - before.timeS) / (after.timeS - before.timeS)
  return one.massG - before.massG - share * (after.massG - before.massG)
}

function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort()
  const middle = Math.floor(sorted.length / 2)
  const upper = sorted[middle] ?? 0
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2
}
