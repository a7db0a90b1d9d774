import { describe, expect, it } from 'vitest'
import { peakToValley } from '../../../src/science/photo/peak-to-valley.ts'
import { surfaceGrid } from '../../../src/science/photo/surface-grid.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'

const radiusRatio = 0.6
const whole = { radiusRatio, seenFrom: radiusRatio, seenTo: 1, from: radiusRatio, to: 1 }
const grid = surfaceGrid({ ...whole, level: 2 })
const coefficients = (m: number, p: number, value: number) =>
  annularTerms(2).map((t) => (t.angularOrder === m && t.radialOrder === p && !t.isSine ? value : 0))

describe('peakToValley', () => {
  it('gives the closed forms of taper, waves and nothing', () => {
    // A cone of slope 1 in t runs from -1 to 1; waves of amplitude 0.3 from -0.3 to 0.3.
    expect(peakToValley(grid, coefficients(0, 1, 0.5))).toBeCloseTo(1, 12) // rounding
    expect(peakToValley(grid, coefficients(2, 0, 0.3))).toBeCloseTo(0.6, 12)
    expect(peakToValley(grid, coefficients(3, 0, 0.3))).toBeCloseTo(0.6, 12)
    expect(peakToValley(grid, [])).toBe(0)
  })

  it('gives 1 - eps^2 for a sphere r^2', () => {
    // r = 0.8 + 0.2 t, so r^2 = 0.64 + 0.32 P1 + 0.04 (2 P2 + 1) / 3.
    const sphere = coefficients(0, 1, 0.32).map(
      (v, k) => v + (coefficients(0, 2, 0.08 / 3)[k] ?? 0),
    )
    expect(peakToValley(grid, sphere)).toBeCloseTo(1 - 0.36, 12) // rounding
  })

  it('does not see a tilt, and scales with the surface', () => {
    const form = coefficients(0, 1, 0.2).map((v, k) => v + (coefficients(3, 0, 0.1)[k] ?? 0))
    const flat = peakToValley(grid, form)
    const tilted = form.map((value, k) => (k === 0 ? 7 : k === 1 ? -4 : value))
    expect(peakToValley(grid, tilted)).toBeCloseTo(flat, 11) // rounding of heights of order 10
    expect(
      peakToValley(
        grid,
        form.map((v) => -3 * v),
      ),
    ).toBeCloseTo(3 * flat, 12)
  })

  it('takes the plane by area, not by rings: one wave around with t has a part of a plane', () => {
    // h = t cos(angle); plane c r cos(angle) with c = int t r^2 / int r^3 over the land.
    const grid2 = surfaceGrid({ ...whole, level: 2 })
    let [top, bottom] = [0, 0]
    for (let i = 0; i < 17; i++) {
      const r = 0.6 + (0.4 * i) / 16
      const t = (r - 0.8) / 0.2
      top += t * r * r
      bottom += r ** 3
    }
    const c = top / bottom
    const expected = 2 * Math.max(Math.abs(1 - c), Math.abs(-1 - 0.6 * c))
    expect(peakToValley(grid2, coefficients(1, 1, 1))).toBeCloseTo(expected, 10) // same sums
  })
})
