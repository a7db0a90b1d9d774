import { describe, expect, it } from 'vitest'
import { peakAndValley } from '../../../src/science/surface/peak-and-valley.ts'
import { madeMap } from './made-map.ts'

const size = { radiusRatio: 0.7, ringCount: 9, angleCount: 360 }

describe('peakAndValley', () => {
  it('gives c (1 - e^2) for a sphere c r^2 over a ring, edges included', () => {
    const got = peakAndValley(madeMap((r) => -2 * r * r, size))
    expect(got.peakToValley).toBeCloseTo(2 * (1 - 0.49), 12) // rounding
    expect([got.peak.radius, got.valley.radius]).toEqual([0.7, 1])
  })

  it('gives k (1 - e) for a cone k r', () => {
    expect(peakAndValley(madeMap((r) => 3 * r, size)).peakToValley).toBeCloseTo(0.9, 12) // rounding
  })

  it.each([2, 3, 4, 5, 6])('gives 2 A for %i lobes of amplitude A at the outer edge', (n) => {
    const map = madeMap((r, a) => 0.3 * r ** n * Math.cos(n * (a - 0.2)), size)
    const got = peakAndValley(map)
    // A crest lies within half a degree of a ray: 1 - cos(n 0.5 deg) is at most 1.4e-3 for n = 6.
    expect(Math.abs(got.peakToValley / 0.6 - 1)).toBeLessThan(1.5e-3)
    expect(got.peak.radius).toBe(1)
    const crest = ((0.2 * 180) / Math.PI) % (360 / n)
    expect(Math.abs((got.peak.angleDeg % (360 / n)) - crest)).toBeLessThanOrEqual(0.5)
  })

  it('grows with the surface and does not mind a constant', () => {
    const wave = (r: number, a: number) => r * Math.cos(2 * a)
    const once = peakAndValley(madeMap(wave, size)).peakToValley
    const more = peakAndValley(madeMap((r, a) => 5 + 3 * wave(r, a), size)).peakToValley
    expect(more).toBeCloseTo(3 * once, 12) // rounding
  })

  it('refuses no heights and heights that are no number', () => {
    const map = { radii: [1], anglesDeg: [0], heights: [[Number.NaN]] }
    expect(() => peakAndValley(map)).toThrow('finite heights')
    expect(() => peakAndValley({ radii: [], anglesDeg: [], heights: [] })).toThrow('none')
  })
})
