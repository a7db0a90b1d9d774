import type { Shape } from './drawing.ts'
import { roundPx } from './round-px.ts'

/**
 * A bar of a stated length with its words to the right.
 *
 * @param bar left end and height of its line, px; its length, px; words
 * @returns the shapes
 * @example scaleBar({ x: 8, y: 20, lengthPx: 40, text: '20 um' }).length // 4
 */
export function scaleBar(bar: {
  readonly x: number
  readonly y: number
  readonly lengthPx: number
  readonly text: string
}): readonly Shape[] {
  const { text } = bar
  const [x1, x2, y] = [bar.x, bar.x + bar.lengthPx, bar.y].map(roundPx) as [number, number, number]
  const pen = { kind: 'line', stroke: 'ink', strokePx: 1.6 } as const
  return [
    { ...pen, x1, x2, y1: y, y2: y },
    { ...pen, x1, x2: x1, y1: y - 5, y2: y + 5 },
    { ...pen, x1: x2, x2, y1: y - 5, y2: y + 5 },
    {
      kind: 'text',
      x: roundPx(x2 + 8),
      y: roundPx(y + 4),
      text,
      sizePx: 13,
      anchor: 'start',
      tone: 'ink',
    },
  ]
}
