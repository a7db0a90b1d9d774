import { describe, expect, it } from 'vitest'
import { areaWeights } from '../../../src/science/surface/area-weights.ts'
import { mapPoints } from '../../../src/science/surface/map-points.ts'
import { withoutPlane } from '../../../src/science/surface/without-plane.ts'
import { seededNormal } from '../seeded-random.ts'
import { madeMap } from './made-map.ts'

const size = { radiusRatio: 0.6, ringCount: 9, angleCount: 36 }

describe('withoutPlane', () => {
  it('finds a plane again and leaves nothing of it', () => {
    const map = madeMap((r, a) => 2 + 3 * r * Math.cos(a) - 4 * r * Math.sin(a), size)
    const got = withoutPlane(map)
    expect([got.offset, got.slopeX, got.slopeY]).toEqual(
      [2, 3, -4].map((v) => expect.closeTo(v, 12)),
    )
    for (const row of got.map.heights) for (const h of row) expect(Math.abs(h)).toBeLessThan(1e-12)
  })

  it('tilts r^3 cos a as the integrals say: slope 2/3 (1 + e^2 + e^4) / (1 + e^2)', () => {
    // slope = E[r^3 cos a r cos a] / E[r^2 cos^2 a] = E[r^4] / E[r^2], with
    // E[r^4] = (1 - e^6) / (3 (1 - e^2)) and E[r^2] = (1 + e^2) / 2 over the area of the ring.
    const e2 = 0.36
    const expected = (2 / 3) * ((1 + e2 + e2 * e2) / (1 + e2))
    const fine = { ...size, ringCount: 1601 }
    const got = withoutPlane(madeMap((r, a) => r ** 3 * Math.cos(a), fine))
    // Error by the square of a step, (0.4 / 1600)^2 = 6e-8.
    expect(Math.abs(got.slopeX - expected)).toBeLessThan(2e-7)
    expect(got.slopeY).toBeCloseTo(0, 12) // rounding
  })

  it('leaves least squares: any other plane leaves more', () => {
    const normal = seededNormal(3)
    const map = madeMap(() => normal(), size)
    const left = withoutPlane(map).map
    const weights = areaWeights(map.radii)
    const weighted = (dx: number, dy: number, d0: number) =>
      mapPoints(left).reduce((sum, { x, y, z }, i) => {
        const w = weights[Math.floor(i / size.angleCount)] as number
        return sum + w * (z - d0 - dx * x - dy * y) ** 2
      }, 0)
    const best = weighted(0, 0, 0)
    for (const [dx, dy, d0] of [
      [1e-3, 0, 0],
      [-1e-3, 0, 0],
      [0, 1e-3, 0],
      [0, -1e-3, 0],
      [0, 0, 1e-3],
      [0, 0, -1e-3],
    ] as const) {
      expect(weighted(dx, dy, d0)).toBeGreaterThan(best)
    }
  })

  it('changes nothing the second time', () => {
    const normal = seededNormal(8)
    const once = withoutPlane(madeMap(() => normal(), size))
    const twice = withoutPlane(once.map)
    expect(Math.hypot(twice.slopeX, twice.slopeY, twice.offset)).toBeLessThan(1e-12) // rounding
  })

  it('refuses two rays, a missing circle and a short one', () => {
    const map = {
      radii: [1, 2],
      anglesDeg: [0, 180],
      heights: [
        [1, 2],
        [1, 2],
      ],
    }
    expect(() => withoutPlane(map)).toThrow('3 rays')
    expect(() => withoutPlane({ ...map, anglesDeg: [0, 120, 240] })).toThrow('3 heights a ring')
    expect(() => withoutPlane({ ...map, anglesDeg: [0, 120, 240], heights: [[1, 2, 3]] })).toThrow(
      'full map',
    )
  })
})
