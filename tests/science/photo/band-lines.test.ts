import { describe, expect, it } from 'vitest'
import { bandLines } from '../../../src/science/photo/band-lines.ts'

const face = {
  outer: { cx: 500, cy: 400, rx: 300, ry: 300, rotationDeg: 0 },
  radiusRatio: 0.6,
  seenFrom: 0.62,
  seenTo: 0.98,
}

describe('bandLines', () => {
  it('draws the bands of a wedge as straight lines, a half band from the bright ones', () => {
    const gap = new Float64Array(47)
    gap[1] = 3 // bands per outer radius, along x: from -2.94 to 2.94
    const lines = bandLines(gap, face)
    const orders = new Set(lines.map((line) => line.order))
    expect([...orders].sort()).toEqual([0, 1, 2, 3, 4, 5])
    for (const { order, points } of lines) {
      const x = (order - 3 + 0.5) / 3
      // Straight pieces between 240 rays: x is off by at most (2 pi / 240)^2 / 8 of the radius,
      // and pixels are rounded to a hundredth.
      for (const [px] of points) expect(Math.abs(px - 500 - 300 * x)).toBeLessThan(0.05)
    }
  })

  it('draws closed bands as circles', () => {
    const gap = new Float64Array(47)
    gap[0] = 0.5
    gap[3] = 0.7 // taper
    const lines = bandLines(gap, face)
    expect(lines).toHaveLength(1)
    for (const [px, py] of lines[0]?.points ?? []) {
      expect(Math.hypot(px - 500, py - 400)).toBeCloseTo(240, 1) // rounded to a hundredth
    }
  })
})
