import type { Dash, Shape, Tone } from './drawing.ts'
import { boxPath } from './path-data.ts'
import { roundPx } from './round-px.ts'

export const legendRowPx = 19
const leftPx = 8
const signPx = 34

/** A word of a legend with what it stands for, drawn about the middle of its sign. */
export interface LegendRow {
  readonly text: string
  readonly sign: (x: number, y: number) => readonly Shape[]
}

/**
 * The rows of a legend, one below the other.
 *
 * @param rows words and signs
 * @param topPx where the first row begins, px
 * @returns the shapes; each row takes legendRowPx
 */
export function legendRows(rows: readonly LegendRow[], topPx: number): readonly Shape[] {
  return rows.flatMap(({ text, sign }, index): Shape[] => {
    const y = roundPx(topPx + legendRowPx * (index + 0.75))
    return [
      ...sign(leftPx + signPx / 2, y - 4),
      { kind: 'text', x: leftPx + signPx + 8, y, text, sizePx: 13, anchor: 'start', tone: 'ink' },
    ]
  })
}

/** A line as it is drawn, for a legend. */
export function legendLine(pen: {
  readonly stroke: Tone
  readonly strokePx: number
  readonly dash?: Dash
}): LegendRow['sign'] {
  return (x, y) => [{ kind: 'line', x1: x - signPx / 2, x2: x + signPx / 2, y1: y, y2: y, ...pen }]
}

/** An area as it is filled, for a legend. */
export function legendArea(look: {
  readonly fill: Tone
  readonly stroke: Tone
}): LegendRow['sign'] {
  return (x, y) => [
    {
      kind: 'path',
      d: boxPath({ x: x - 10, y: y - 6, width: 20, height: 12 }),
      ...look,
      strokePx: 1.4,
    },
  ]
}
