import type { Drawing, Shape } from './drawing.ts'
import { boxPath } from './path-data.ts'
import { roundPx } from './round-px.ts'

export interface ComparedLimit {
  /** In one unit for all; null: no limit on that side. */
  readonly lower: number | null
  readonly upper: number | null
  /** What stands at the end of its bar, as printed. */
  readonly text: string
}

const rowPx = 22
const barPx = 10
const textPx = 13
/** So much of the width belongs to the text behind the longest bar. */
const textShare = 0.42

/**
 * Limits of several sets on one scale, a bar for each: from 0 to an upper limit, from a lower one
 * to the end of the scale, or between both. Lengths are in proportion: five times as large is five
 * times as long.
 *
 * @param limits one to twelve, each with at least one side, not negative
 * @param widthPx from 160 to 1200
 * @returns the drawing, 22 px a limit
 * @throws RangeError without limits, with a limit without sides or outside of these ranges
 * Validity: it shows numbers and judges nothing; the scale begins at 0.
 * @example limitComparison([{ lower: null, upper: 2, text: '' }], 200).heightPx // 22
 */
export function limitComparison(limits: readonly ComparedLimit[], widthPx: number): Drawing {
  const longest = largestOf(limits)
  if (!(widthPx >= 160 && widthPx <= 1200)) {
    throw new RangeError(`limitComparison requires widthPx from 160 to 1200, got ${widthPx}`)
  }
  const barsPx = widthPx * (1 - textShare)
  const at = (value: number) => roundPx((value / longest) * barsPx)
  const shapes = limits.flatMap(({ lower, upper, text }, index): Shape[] => {
    const y = index * rowPx + (rowPx - barPx) / 2
    const from = at(lower ?? 0)
    const to = at(upper ?? longest)
    const d = boxPath({ x: from, y, width: Math.max(to - from, 1), height: barPx })
    const ends = [lower, upper].filter((one) => one !== null).map(at)
    return [
      { kind: 'path', d, fill: 'faint', stroke: 'soft', strokePx: 1 },
      ...ends.map(
        (x): Shape => ({
          kind: 'line',
          ...{ x1: x, x2: x, y1: y - 3, y2: y + barPx + 3 },
          stroke: 'ink',
          strokePx: 3,
        }),
      ),
      {
        kind: 'text',
        x: roundPx(to + 8),
        y: roundPx(y + barPx),
        text,
        sizePx: textPx,
        anchor: 'start',
        tone: 'ink',
      },
    ]
  })
  return { widthPx, heightPx: limits.length * rowPx, shapes }
}

function largestOf(limits: readonly ComparedLimit[]): number {
  if (!(limits.length >= 1 && limits.length <= 12)) {
    throw new RangeError(`limitComparison requires limits from 1 to 12, got ${limits.length}`)
  }
  const sides = limits.map((one) => [one.lower, one.upper].filter((side) => side !== null))
  const all = sides.flat()
  const areSides = sides.every((one) => one.length > 0)
  if (!areSides || !all.every((one) => one >= 0 && one < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`limitComparison requires limits from 0 to any, got ${all}`)
  }
  // A scale for nothing but zero is any scale.
  return Math.max(...all) || 1
}
