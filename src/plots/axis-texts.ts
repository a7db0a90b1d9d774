import type { Shape } from './drawing.ts'

const sizePx = 12
/** Of a letter, on average, with some room: digits of the pages are half their size wide. */
const letterPx = 6.6
const tickPx = 5
const firstRowPx = 18
const rowPx = 15
const edgePx = 2

/**
 * Ticks below an axis with their texts: each as near its tick as the frame allows, in a row
 * further down where another text is in its way.
 *
 * @param items places and texts, in the order in which they choose their row
 * @param frame widthPx of the drawing; y of the axis
 * @returns the shapes, and the height below the axis that they take
 * @example axisTexts([{ x: 50, text: '1.5' }], { widthPx: 100, y: 10 }).heightPx // 18
 */
export function axisTexts(
  items: readonly { readonly x: number; readonly text: string }[],
  frame: { readonly widthPx: number; readonly y: number },
): { readonly shapes: readonly Shape[]; readonly heightPx: number } {
  const { widthPx, y } = frame
  const rows: { from: number; to: number }[][] = []
  const shapes = items.flatMap(({ x, text }): Shape[] => {
    const half = (text.length * letterPx) / 2
    const middle = Math.max(half + edgePx, Math.min(x, widthPx - half - edgePx))
    const taken = { from: middle - half, to: middle + half }
    const free = rows.findIndex((row) =>
      row.every((other) => other.to < taken.from || other.from > taken.to),
    )
    const index = free === -1 ? rows.push([]) - 1 : free
    rows[index]?.push(taken)
    const textY = y + firstRowPx + index * rowPx
    return [
      { kind: 'line', x1: x, y1: y, x2: x, y2: y + tickPx, stroke: 'ink' },
      { kind: 'text', x: middle, y: textY, text, sizePx, anchor: 'middle', tone: 'ink' },
    ]
  })
  return { shapes, heightPx: firstRowPx + rowPx * Math.max(0, rows.length - 1) }
}
