import { describe, expect, it } from 'vitest'
import { peakToValley } from '../../../src/science/photo/peak-to-valley.ts'
import { solveBands } from '../../../src/science/photo/solve-bands.ts'
import { surfaceGrid } from '../../../src/science/photo/surface-grid.ts'
import { bandLand } from './band-land.ts'

const radiusRatio = 0.65
const grid = surfaceGrid({
  radiusRatio,
  level: 4,
  seenFrom: radiusRatio,
  seenTo: 1,
  from: radiusRatio,
  to: 1,
})
const forms: [string, number, (x: number, y: number) => number][] = [
  // Closed forms: a sphere 0.8 r^2, a saddle 0.6 r^2 cos 2a, a cone 1.2 r, and three waves 0.4.
  ['sphere', 0.8 * (1 - radiusRatio ** 2), (x, y) => 0.8 * (x * x + y * y)],
  ['saddle', 1.2, (x, y) => 0.6 * (x * x - y * y)],
  ['cone', 1.2 * (1 - radiusRatio), (x, y) => 1.2 * Math.hypot(x, y)],
  ['three waves', 0.8, (x, y) => 0.4 * Math.cos(3 * Math.atan2(y, x))],
]

describe('solveBands', () => {
  it.each(forms)('finds a %s of %d bands under a wedge, up to its sign', (_, expected, form) => {
    const gap = (x: number, y: number) => 3.5 * x - 2 * y + 0.13 + form(x, y)
    const land = bandLand({ radiusRatio, wanted: 4000, gap, noise: 0.02 })
    const found = solveBands(land.samples, land.relative, { radiusRatio, isThorough: false })
    const flatness = peakToValley(grid, found?.fine.model.gap.subarray(1) ?? [])
    // Noise of 0.04 of the swing on 4000 samples: a few thousandths, and the largest of 3060.
    expect(Math.abs(flatness - expected)).toBeLessThan(0.02)
  })

  it('finds the bands beside a spot of glare many times as bright', () => {
    const gap = (x: number, y: number) => 3 * x + 0.5 * y + 0.5 * (x * x - y * y)
    const land = bandLand({ radiusRatio, wanted: 4000, gap, noise: 0.02 })
    const light = land.relative.map((value, i) => {
      const [dx, dy] = [(land.samples.xs[i] ?? 0) - 0.6, (land.samples.ys[i] ?? 0) - 0.6]
      return value + 5 * Math.exp(-(dx * dx + dy * dy) / 0.02)
    })
    const found = solveBands(land.samples, light, { radiusRatio, isThorough: false })
    const flatness = peakToValley(grid, found?.fine.model.gap.subarray(1) ?? [])
    // A saddle of 0.5; a tenth of the land is lost to the glare.
    expect(Math.abs(flatness - 1)).toBeLessThan(0.03)
  })

  it('gives the same numbers again, bit for bit', () => {
    const gap = (x: number, y: number) => 4 * x + y + 0.3 * (x * x - y * y)
    const land = bandLand({ radiusRatio, wanted: 1500, gap, noise: 0.05 })
    const once = solveBands(land.samples, land.relative, { radiusRatio, isThorough: false })
    const twice = solveBands(land.samples, land.relative, { radiusRatio, isThorough: false })
    expect(once).not.toBeNull()
    expect(twice?.fine.model).toEqual(once?.fine.model)
  })

  it('gives nothing where fewer than 500 samples can be used', () => {
    const land = bandLand({ radiusRatio, wanted: 400, gap: (x) => 5 * x })
    const options = { radiusRatio, isThorough: false }
    expect(solveBands(land.samples, land.relative, options)).toBeNull()
  })
})
