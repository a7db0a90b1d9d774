import { describe, expect, it } from 'vitest'
import { sampleRing } from '../../../src/science/photo/sample-ring.ts'

const size = 301
const slope = {
  light: Float32Array.from({ length: size * size }, (_, i) => {
    return 0.2 + 0.001 * (i % size) + 0.0005 * Math.floor(i / size)
  }),
  width: size,
  height: size,
}
const outer = { cx: 150, cy: 150, rx: 120, ry: 110, rotationDeg: 20 }

describe('sampleRing', () => {
  it('reads a slope of light at the right places, y up', () => {
    const found = sampleRing(slope, outer, { from: 0.6, to: 1, wanted: 500 })
    // Areas of cells at the borders count by their middles: within a tenth of the count asked.
    expect(Math.abs(found.xs.length - 500)).toBeLessThan(50)
    const turn = (20 * Math.PI) / 180
    found.values.forEach((value, i) => {
      const [x, y] = [found.xs[i] ?? 0, found.ys[i] ?? 0]
      expect(Math.hypot(x, y)).toBeGreaterThanOrEqual(0.6)
      const along = 120 * (x * Math.cos(turn) + y * Math.sin(turn))
      const across = 110 * (-x * Math.sin(turn) + y * Math.cos(turn))
      const px = 150 + along * Math.cos(turn) - across * Math.sin(turn)
      const py = 150 - (along * Math.sin(turn) + across * Math.cos(turn))
      // The light itself is kept as a 32-bit float.
      expect(value).toBeCloseTo(0.2 + 0.001 * px + 0.0005 * py, 6)
    })
  })

  it('says what lies off the picture or is clipped', () => {
    const off = sampleRing(slope, { ...outer, cx: 250 }, { from: 0.6, to: 1, wanted: 500 })
    off.isUsable.forEach((is, i) => {
      if ((off.xs[i] ?? 0) < 0.1) expect(is).toBe(1)
      if ((off.xs[i] ?? 0) > 0.7) expect(is).toBe(0)
    })
    expect(off.isUsable.some((is) => is === 0)).toBe(true)
    const white = { ...slope, light: new Float32Array(size * size).fill(1) }
    const { isUsable } = sampleRing(white, outer, { from: 0.6, to: 1, wanted: 500 })
    expect(isUsable.every((is) => is === 0)).toBe(true)
  })

  it('refuses radii that do not rise', () => {
    expect(() => sampleRing(slope, outer, { from: 0.9, to: 0.5, wanted: 9 })).toThrow('to')
    expect(() => sampleRing(slope, outer, { from: -0.1, to: 0.5, wanted: 9 })).toThrow('from')
  })
})
