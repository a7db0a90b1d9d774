import { describe, expect, it } from 'vitest'
import { mapLobes } from '../../../src/science/surface/map-lobes.ts'
import { madeMap } from './made-map.ts'

const e = 0.7
const size = { radiusRatio: e, ringCount: 17, angleCount: 180 }

describe('mapLobes', () => {
  it.each([2, 3, 4, 5, 6])('finds amplitude and phase of %i lobes and nothing else', (n) => {
    const phase = (25 * Math.PI) / 180
    const lobes = mapLobes(
      madeMap((_, a) => 0.4 * Math.cos(n * (a - phase)), size),
      [2, 3, 4, 5, 6],
    )
    for (const lobe of lobes) {
      expect(lobe.amplitude).toBeCloseTo(lobe.order === n ? 0.4 : 0, 12) // rounding
    }
    expect(lobes[n - 2]?.phaseDeg).toBeCloseTo(25, 9) // rounding of the arc tangent in degrees
  })

  it('averages a wave that grows outwards by area: r^2 cos 2a gives (1 + e^2) / 2', () => {
    const fine = { ...size, ringCount: 801 }
    const [lobe] = mapLobes(
      madeMap((r, a) => r * r * Math.cos(2 * a), fine),
      [2],
    )
    expect(Math.abs((lobe?.amplitude ?? 0) - (1 + e * e) / 2)).toBeLessThan(2e-7) // a step squared
  })

  it('turns with the surface', () => {
    const turned = (by: number) =>
      mapLobes(
        madeMap((_, a) => Math.cos(3 * (a - by)) + 0.2 * Math.cos(2 * a), size),
        [3],
      )[0]
    const difference = (turned(0.5)?.phaseDeg ?? 0) - (turned(0.1)?.phaseDeg ?? 0)
    expect(difference).toBeCloseTo((0.4 * 180) / Math.PI, 9) // rounding
  })

  it('gives phases from 0 to below 360 / order', () => {
    for (const deg of [0, 100, 119.9, 200, 359]) {
      const map = madeMap((_, a) => Math.cos(3 * (a - (deg * Math.PI) / 180)), size)
      const phase = mapLobes(map, [3])[0]?.phaseDeg ?? Number.NaN
      expect(phase).toBeGreaterThanOrEqual(0)
      expect(phase).toBeLessThan(120)
      expect(Math.cos(((phase - deg) * 3 * Math.PI) / 180)).toBeCloseTo(1, 12) // rounding
    }
  })

  it('is blind to a wave that is high outside where it is low inside', () => {
    const middle = (2 / 3) * ((1 - e ** 3) / (1 - e * e))
    const fine = { ...size, ringCount: 801 }
    const [lobe] = mapLobes(
      madeMap((r, a) => (r - middle) * Math.cos(2 * a), fine),
      [2],
    )
    expect(lobe?.amplitude).toBeLessThan(2e-7) // a step squared
  })

  it('refuses orders that the rays can not carry', () => {
    const map = madeMap(() => 0, { ...size, angleCount: 8 })
    expect(() => mapLobes(map, [4])).toThrow('order')
    expect(() => mapLobes(map, [0])).toThrow('order')
    expect(() => mapLobes(map, [1.5])).toThrow('order')
    expect(mapLobes(map, [3])).toHaveLength(1)
  })
})
