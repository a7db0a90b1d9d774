import { describe, expect, it } from 'vitest'
import { bandPrior } from '../../../src/science/photo/band-prior.ts'
import { bandTables } from '../../../src/science/photo/band-tables.ts'
import { fitBands } from '../../../src/science/photo/fit-bands.ts'
import { annularBasis } from '../../../src/science/surface/annular-basis.ts'
import { annularTerms } from '../../../src/science/surface/annular-terms.ts'
import { bandLand } from './band-land.ts'

const radiusRatio = 0.6
const terms = annularTerms(1)
const truth = [0.2, 4, 1.5, 0.3, -0.2, 0.25, 0.1, -0.15, 0.1]
const gap = (x: number, y: number) => {
  const row = annularBasis({ terms, radiusRatio, xs: [x], ys: [y] })
  return row.reduce((sum, value, k) => sum + value * (truth[k + 1] ?? 0), truth[0] ?? 0)
}
const { samples, relative } = bandLand({ radiusRatio, wanted: 1500, gap, noise: 0.02 })
const indexes = Array.from(samples.xs, (_, i) => i)
const options = {
  prior: bandPrior(terms, { backgroundCount: 1, swing: 0.5 }),
  scale: 0.1,
  effectiveCount: 1000,
  noise: 0.02,
  mostRounds: 30,
  tolerance: 1e-9,
}
const start = {
  gap: Float64Array.from(truth, (value, k) => (k > 2 ? 0 : value)),
  background: new Float64Array(1),
  swing: Float64Array.from([0.4, 0, 0, 0, 0, 0]),
  second: 0,
}

describe('fitBands', () => {
  it('finds the surface that the bands were made of', () => {
    const tables = bandTables(samples, relative, { radiusRatio, level: 1, indexes })
    const fit = fitBands(tables, start, options)
    // Noise 0.02 over a slope of pi x 0.5 x rms, 1500 samples: 0.0005; eight times that, and the
    // pull of the prior.
    truth.forEach((value, k) => {
      expect(Math.abs((fit.model.gap[k] ?? 0) - value)).toBeLessThan(0.004)
    })
    expect(fit.model.swing[0]).toBeCloseTo(0.5, 2)
    expect(fit.roundCount).toBeLessThan(30)
  })

  it('is hardly moved by a part of the land under glare', () => {
    const glare = relative.map((value, i) => ((samples.xs[i] ?? 0) > 0.85 ? value + 2 : value))
    const tables = bandTables(samples, glare, { radiusRatio, level: 1, indexes })
    const fit = fitBands(tables, start, options)
    truth.forEach((value, k) => {
      // Fewer samples, and Cauchy weights of 1 / 400 for the glare.
      expect(Math.abs((fit.model.gap[k] ?? 0) - value)).toBeLessThan(0.02)
    })
  })

  it('never ends dearer than it began', () => {
    const tables = bandTables(samples, relative, { radiusRatio, level: 1, indexes })
    const none = fitBands(tables, start, { ...options, mostRounds: 0 })
    const one = fitBands(tables, start, { ...options, mostRounds: 1 })
    const many = fitBands(tables, start, options)
    expect(one.cost).toBeLessThan(none.cost)
    expect(many.cost).toBeLessThan(one.cost)
    expect(none.model).toEqual(start)
  })
})
