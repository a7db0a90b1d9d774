import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'

/** What one column of pixels shows of a trace. */
export interface TraceColumn {
  /** Number of the column, from 0. */
  readonly column: number
  readonly low: number
  readonly high: number
  readonly first: number
  readonly last: number
}

/**
 * Gives what each column of pixels shows of a trace, so that no peak is lost however far it is zoomed
 * out: the lowest and the highest value in it, and the first and the last, which join it to its
 * neighbours.
 *
 * @param trace timesS: rising; values: as many, NaN where nothing was read
 * @param window from, to: s, to after from; columns: whole, from 1 to 10 000
 * @returns the columns that hold a reading, in order
 * @throws RangeError outside these ranges
 * Source: definition: the drawing of every column is that of all its readings.
 * @example peaksByColumn({ timesS: [0, 1, 2, 3], values: [5, 9, 1, 4] }, { fromS: 0, toS: 4, columns: 2
 *   })[0]?.high // 9
 */
export function peaksByColumn(
  trace: { readonly timesS: ArrayLike<number>; readonly values: ArrayLike<number> },
  window: { readonly fromS: number; readonly toS: number; readonly columns: number },
): TraceColumn[] {
  const name = 'peaksByColumn'
  const { timesS, values } = trace
  const { fromS, toS, columns } = window
  requireWhole(name, 'count of values', values.length, { from: timesS.length, to: timesS.length })
  requireWhole(name, 'columns', columns, { from: 1, to: 10_000 })
  requireFinite(name, 'fromS', fromS)
  requireFinite(name, 'toS', toS)
  if (!(toS > fromS)) throw new RangeError(`${name} requires toS after fromS, got ${toS}`)
  const perColumn = (toS - fromS) / columns
  const found: TraceColumn[] = []
  let open: { column: number; low: number; high: number; first: number; last: number } | null = null
  for (let i = firstAtOrAfter(timesS, fromS); i < timesS.length; i++) {
    const at = timesS[i] as number
    if (at > toS) break
    const value = values[i] as number
    if (Number.isNaN(value)) continue
    const column = Math.min(columns - 1, Math.floor((at - fromS) / perColumn))
    if (open === null || open.column !== column) {
      open = { column, low: value, high: value, first: value, last: value }
      found.push(open)
    } else {
      if (value < open.low) open.low = value
      if (value > open.high) open.high = value
      open.last = value
    }
  }
  return found
}

/** By halves: the place of the first time that is not before. */
function firstAtOrAfter(timesS: ArrayLike<number>, fromS: number): number {
  let [low, high] = [0, timesS.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((timesS[middle] as number) < fromS) low = middle + 1
    else high = middle
  }
  return low
}
