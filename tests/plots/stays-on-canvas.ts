import { expect } from 'vitest'
import type { Drawing } from '../../src/plots/drawing.ts'
import { roundPx } from '../../src/plots/round-px.ts'
import { coordinates } from './path-points.ts'

/** Every coordinate lies in the drawing and has two decimals at most. */
export function expectOnCanvas(drawing: Drawing): void {
  let checkedCount = 0
  const side = Math.max(drawing.widthPx, drawing.heightPx)
  for (const shape of drawing.shapes) {
    const values =
      shape.kind === 'path'
        ? coordinates(shape.d)
        : shape.kind === 'line'
          ? [shape.x1, shape.y1, shape.x2, shape.y2]
          : [shape.x, shape.y]
    for (const value of values) {
      expect(value).toBeGreaterThanOrEqual(0)
      expect(value).toBeLessThanOrEqual(side)
      expect(roundPx(value)).toBe(value)
      checkedCount++
    }
  }
  expect(checkedCount).toBeGreaterThan(0)
}
