import { requireRange } from '../check/require-range.ts'

export type Interval = readonly [low: number, high: number]

/**
 * Gives the coverage intervals of sorted trials.
 *
 * q = the whole number nearest to p M; symmetric: from trial (M - q) / 2 on; shortest: the r for
 * which y(r + q) - y(r) is smallest
 *
 * @param sorted results of 100 or more trials, smallest first
 * @param probability from 0.01 to 0.9999
 * @returns the probabilistically symmetric and the shortest interval
 * @throws RangeError outside these ranges
 * Validity: the shortest interval wanders by more than the symmetric one, since near its place many
 *   are almost as short.
 * Source: JCGM 101:2008, 7.7.
 * @example coverageIntervals(Float64Array.from({ length: 101 }, (_, i) => i), 0.9).symmetric[1]
 *   // 95
 */
export function coverageIntervals(
  sorted: Float64Array,
  probability: number,
): { readonly symmetric: Interval; readonly shortest: Interval } {
  const name = 'coverageIntervals'
  requireRange(name, 'count of trials', sorted.length, { from: 100, to: 1e9 })
  requireRange(name, 'probability', probability, { from: 0.01, to: 0.9999 })
  const count = sorted.length
  const covered = Math.floor(probability * count + 0.5)
  const at = (index: number): number => sorted[index] as number
  const first = Math.floor((count - covered + 1) / 2) - 1
  const from = Math.max(0, first)
  let best = 0
  for (let r = 1; r + covered < count; r++) {
    if (at(r + covered) - at(r) < at(best + covered) - at(best)) best = r
  }
  return {
    symmetric: [at(from), at(Math.min(count - 1, from + covered))],
    shortest: [at(best), at(Math.min(count - 1, best + covered))],
  }
}
