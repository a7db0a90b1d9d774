import { describe, expect, it } from 'vitest'
import { mapRms } from '../../../src/science/surface/map-rms.ts'
import { withoutPlane } from '../../../src/science/surface/without-plane.ts'
import { madeMap } from './made-map.ts'

const e = 0.6
const size = { radiusRatio: e, ringCount: 1601, angleCount: 36 }
const rms = (height: (r: number, a: number) => number) =>
  mapRms(withoutPlane(madeMap(height, size)).map)
// The rule errs by the square of a step, (0.4 / 1600)^2 = 6e-8.
const tolerance = 3e-7

describe('mapRms', () => {
  it('gives c (1 - e^2) / sqrt 12 for a sphere c r^2', () => {
    // Over the area, r^2 is even between e^2 and 1: a rectangular distribution.
    expect(Math.abs(rms((r) => r * r) - (1 - e * e) / Math.sqrt(12))).toBeLessThan(tolerance)
  })

  it('gives k sqrt(E[r^2] - E[r]^2) for a cone k r', () => {
    // E[r^2] = (1 + e^2) / 2, E[r] = 2/3 (1 - e^3) / (1 - e^2)
    const mean = (2 / 3) * ((1 - e ** 3) / (1 - e * e))
    const expected = Math.sqrt((1 + e * e) / 2 - mean * mean)
    expect(Math.abs(rms((r) => r) - expected)).toBeLessThan(tolerance)
  })

  it.each([2, 3, 4])('gives A sqrt(E[r^2n] / 2) for A r^n cos n a with n = %i', (n) => {
    // E[r^2n] = (1 - e^(2n + 2)) / ((n + 1) (1 - e^2))
    const mean = (1 - e ** (2 * n + 2)) / ((n + 1) * (1 - e * e))
    const got = rms((r, a) => 0.8 * r ** n * Math.cos(n * a))
    expect(Math.abs(got - 0.8 * Math.sqrt(mean / 2))).toBeLessThan(tolerance * n * n)
  })

  it('is never above half of peak to valley for heights that average to 0 evenly', () => {
    expect(rms((r, a) => (Math.cos(2 * a) > 0 ? r : -r))).toBeLessThan(1)
    expect(rms(() => 7)).toBeCloseTo(0, 12) // a constant height is no form
  })

  it('refuses one circle', () => {
    expect(() => mapRms({ radii: [1], anglesDeg: [0], heights: [[1]] })).toThrow(RangeError)
  })
})
