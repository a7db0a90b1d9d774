import { describe, expect, it } from 'vitest'
import { relativeLight } from '../../../src/science/photo/relative-light.ts'
import { bandLand } from './band-land.ts'

describe('relativeLight', () => {
  it('takes a slow background away and leaves the bands', () => {
    const gap = (x: number, y: number) => 5 * x + 3 * y
    const { samples, relative } = bandLand({ radiusRatio: 0.6, wanted: 3000, gap })
    const values = samples.values.map((value, i) => {
      const [x, y] = [samples.xs[i] ?? 0, samples.ys[i] ?? 0]
      return value * (1 + 0.3 * x - 0.2 * y + 0.1 * x * y)
    })
    const found = relativeLight({ ...samples, values })
    let squares = 0
    found.forEach((value, i) => {
      squares += (value - (relative[i] ?? 0)) ** 2 / found.length
    })
    // Bands are not quite square to a quadratic: a few per cent of their swing of 0.5 are left.
    expect(Math.sqrt(squares)).toBeLessThan(0.03)
  })

  it('is not drawn up by glare', () => {
    const { samples, relative } = bandLand({
      radiusRatio: 0.6,
      wanted: 3000,
      gap: (x, y) => 5 * x + 3 * y,
    })
    const isGlare = (i: number) => (samples.xs[i] ?? 0) > 0.8 && Math.abs(samples.ys[i] ?? 0) < 0.2
    const values = samples.values.map((value, i) => value + (isGlare(i) ? 3 : 0))
    const found = relativeLight({ ...samples, values })
    found.forEach((value, i) => {
      // The mean light is 1 here; a plain fit would be off by more than 0.1 beside the glare.
      if (!isGlare(i)) expect(Math.abs(value - (relative[i] ?? 0))).toBeLessThan(0.12)
    })
  })

  it('gives 0 where nothing can be used', () => {
    const { samples } = bandLand({ radiusRatio: 0.6, wanted: 300, gap: (x) => 4 * x })
    const isUsable = samples.isUsable.map((_, i) => (i % 5 === 0 ? 0 : 1))
    const found = relativeLight({ ...samples, isUsable })
    found.forEach((value, i) => {
      if (i % 5 === 0) expect(value).toBe(0)
    })
  })
})
