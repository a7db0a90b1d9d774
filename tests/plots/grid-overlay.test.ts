import { describe, expect, it } from 'vitest'
import type { Drawing, PathShape } from '../../src/plots/drawing.ts'
import { gridOverlay } from '../../src/plots/grid-overlay.ts'
import { coordinates } from './path-points.ts'
import { expectOnCanvas } from './stays-on-canvas.ts'

const picture = { widthPx: 400, heightPx: 300 }
const inner = (drawing: Drawing) =>
  drawing.shapes
    .filter((one): one is PathShape => one.kind === 'path' && one.stroke === 'ink')
    .map((one) => coordinates(one.d))

describe('gridOverlay', () => {
  it('lays lines through the middle of the photograph and at its spacing', () => {
    const lines = inner(gridOverlay({ ...picture, directionDeg: 0, spacingPx: 100, offsetPx: 0 }))
    expect(lines.map(([, y]) => y)).toEqual([250, 150, 50])
    for (const line of lines) expect([line[0], line[2]]).toEqual([0, 400])
  })

  it('moves lines to the right upwards by their offset', () => {
    const lines = inner(gridOverlay({ ...picture, directionDeg: 0, spacingPx: 200, offsetPx: 40 }))
    expect(lines.map(([, y]) => y)).toEqual([110])
  })

  it('cuts slanting lines off at the frame', () => {
    for (const directionDeg of [-90, -33, 17, 45, 90, 135]) {
      const drawing = gridOverlay({ ...picture, directionDeg, spacingPx: 37, offsetPx: 5 })
      expectOnCanvas(drawing)
      expect(inner(drawing).length).toBeGreaterThan(5)
      for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of inner(drawing)) {
        expect(Math.max(x1, x2)).toBeLessThanOrEqual(400)
        expect(Math.max(y1, y2)).toBeLessThanOrEqual(300)
        // The direction as the picture shows it, upwards positive; ends have two decimals.
        const across = (x2 - x1) * Math.sin((directionDeg * Math.PI) / 180)
        const along = (y1 - y2) * Math.cos((directionDeg * Math.PI) / 180)
        expect(Math.abs(across - along)).toBeLessThan(0.05)
      }
    }
  })

  it('draws no line where they would be a grey area, and refuses none at all', () => {
    const dense = { ...picture, directionDeg: 0, spacingPx: 1, offsetPx: 0 }
    expect(gridOverlay(dense).shapes).toEqual([])
    expect(() => gridOverlay({ ...dense, spacingPx: 0 })).toThrow(RangeError)
  })
})
