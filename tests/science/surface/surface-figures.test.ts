import { describe, expect, it } from 'vitest'
import { surfaceFigures } from '../../../src/science/surface/surface-figures.ts'
import { madeMap } from './made-map.ts'

const size = { radiusRatio: 0.8, ringCount: 17, angleCount: 180 }

describe('surfaceFigures', () => {
  it('gives a dish its closed forms', () => {
    const got = surfaceFigures(madeMap((r) => 2 * r * r, size))
    const height = 2 * (1 - 0.64)
    expect(got.peakToValley).toBeCloseTo(height, 12) // rounding
    expect(got.minimumZone).toBeCloseTo(height, 10) // held by its symmetry
    expect(got.taper).toBeCloseTo(height, 12) // outer edge high: +
    expect(Math.abs(got.rms - height / Math.sqrt(12))).toBeLessThan(1e-3) // 17 circles, a step squared
    for (const lobe of [...got.lobes, ...got.furtherLobes]) {
      expect(lobe.amplitude).toBeLessThan(1e-12) // rounding
    }
  })

  it('tells each part of a mixed face, tilted as it may be', () => {
    const got = surfaceFigures(
      madeMap(
        (r, a) =>
          9 * r * Math.cos(a) +
          3 -
          2 * (r - 0.8) +
          0.2 * Math.cos(2 * (a - 0.5)) +
          0.1 * Math.sin(3 * a),
        size,
      ),
    )
    expect(got.taper).toBeCloseTo(-0.4, 10) // rounding under a tilt of 9
    const [two, three] = got.lobes
    expect(two?.amplitude).toBeCloseTo(0.2, 10)
    expect(two?.phaseDeg).toBeCloseTo((0.5 * 180) / Math.PI, 8)
    expect(three?.amplitude).toBeCloseTo(0.1, 10)
    expect(three?.phaseDeg).toBeCloseTo(30, 8) // sin 3a has its crest at 30 degrees
    expect([...got.lobes, ...got.furtherLobes].map((lobe) => lobe.order)).toEqual([2, 3, 4, 5, 6])
  })

  it('has a minimum zone of at most its peak to valley, smaller where one edge is turned up', () => {
    const got = surfaceFigures(madeMap((r, a) => Math.exp(-8 * (1 - Math.cos(a))) * r, size))
    expect(got.minimumZone).toBeLessThan(0.98 * got.peakToValley)
    expect(got.peakToValley).toBeCloseTo(got.peak.height - got.valley.height, 12) // rounding
  })

  it('turns with the surface without changing a figure', () => {
    const form = (r: number, a: number) => r ** 4 * Math.cos(2 * a) + r * Math.cos(5 * a)
    const one = surfaceFigures(madeMap(form, size))
    const other = surfaceFigures(madeMap((r, a) => form(r, a - Math.PI / 2), size))
    expect(other.peakToValley).toBeCloseTo(one.peakToValley, 10) // 90 degrees is 45 rays
    expect(other.minimumZone).toBeCloseTo(one.minimumZone, 10)
    expect(other.rms).toBeCloseTo(one.rms, 10)
  })
})
