import { describe, expect, it } from 'vitest'
import { radialTaper } from '../../../src/science/surface/radial-taper.ts'
import { madeMap } from './made-map.ts'

const size = { radiusRatio: 0.8, ringCount: 17, angleCount: 60 }

describe('radialTaper', () => {
  it('is + where the outer edge is the higher one: a cone k r gives k (1 - e)', () => {
    expect(radialTaper(madeMap((r) => 2 * r, size))).toBeCloseTo(0.4, 12) // rounding
  })

  it('is - for a convex face: a sphere -c r^2 gives -c (1 - e^2)', () => {
    expect(radialTaper(madeMap((r) => -3 * r * r, size))).toBeCloseTo(-1.08, 12) // rounding
  })

  it('does not see tilt, lobes, or a crown that is as high at both edges', () => {
    const unseen = (r: number, a: number) =>
      5 * r * Math.cos(a) + r * r * Math.cos(2 * a) - 40 * (r - 0.9) ** 2
    expect(radialTaper(madeMap(unseen, size))).toBeCloseTo(0, 10) // sums of 60 rounded cosines
  })

  it('changes its sign with the surface', () => {
    const form = (r: number, a: number) => r ** 3 + r * Math.cos(2 * a)
    const up = radialTaper(madeMap(form, size))
    expect(radialTaper(madeMap((r, a) => -form(r, a), size))).toBe(-up)
    expect(up).toBeGreaterThan(0)
  })

  it('refuses one circle', () => {
    expect(() => radialTaper({ radii: [1], anglesDeg: [0], heights: [[1]] })).toThrow(
      'count of circles',
    )
  })
})
