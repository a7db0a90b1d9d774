import { expect, it } from 'vitest'
import { photoUncertainty } from '../../../src/science/photo/photo-uncertainty.ts'
import { solveBands } from '../../../src/science/photo/solve-bands.ts'
import { surfaceGrid } from '../../../src/science/photo/surface-grid.ts'
import { bandLand } from './band-land.ts'

const radiusRatio = 0.65
const seen = { seenFrom: 0.66, seenTo: 0.99 }
const whole = { radiusRatio, ...seen, from: radiusRatio, to: 1 }
const grids = {
  all: surfaceGrid({ ...whole, level: 4 }),
  seen: surfaceGrid({ ...whole, level: 4, from: 0.66, to: 0.99 }),
  coarse: surfaceGrid({ ...whole, level: 3 }),
}
const gap = (x: number, y: number) => 4 * x + y + 0.6 * Math.hypot(x, y)
const land = bandLand({ radiusRatio, wanted: 2000, gap, noise: 0.03 })
const found = solveBands(land.samples, land.relative, { radiusRatio, isThorough: false })
const options = { axisRatio: 1, areEdgesFollowed: true, tiltBands: 8 }

it('photoUncertainty gives the parts that its formulas say', () => {
  if (found === null) throw new Error('nothing was fitted')
  const parts = photoUncertainty({ ...found, spread: 0.03 }, grids, options)
  expect(parts.perspective).toBeCloseTo(0.032, 12) // 0.004 x 8
  expect(parts.floor).toBe(0.015)
  // The cone has 0.6 (1 - 0.65) = 0.21 bands, known to a few hundredths: 1 % of it.
  expect(Math.abs(parts.view - 0.0021)).toBeLessThan(0.0004)
  // Unseen are 0.02 of 0.35: a cone loses 0.012 bands there, a quarter of it counts.
  expect(Math.abs(parts.edge - 0.003)).toBeLessThan(0.003)
  expect(parts.statistical).toBeGreaterThan(0)
})

it('photoUncertainty grows with the noise, with edges as set, and with an oblique view', () => {
  if (found === null) throw new Error('nothing was fitted')
  const base = photoUncertainty({ ...found, spread: 0.03 }, grids, options)
  const noisy = photoUncertainty({ ...found, spread: 0.06 }, grids, options)
  expect(noisy.statistical / base.statistical).toBeGreaterThan(1.5)
  const asSet = { ...options, areEdgesFollowed: false }
  const loose = photoUncertainty({ ...found, spread: 0.03 }, grids, asSet)
  expect(loose.edge).toBe(2 * base.edge)
  const oblique = photoUncertainty({ ...found, spread: 0.03 }, grids, {
    ...options,
    axisRatio: 0.5,
  })
  expect(oblique.statistical).toBe(2 * base.statistical)
})

it('photoUncertainty draws the same numbers again', () => {
  if (found === null) throw new Error('nothing was fitted')
  const once = photoUncertainty({ ...found, spread: 0.03 }, grids, options)
  expect(photoUncertainty({ ...found, spread: 0.03 }, grids, options)).toEqual(once)
})
