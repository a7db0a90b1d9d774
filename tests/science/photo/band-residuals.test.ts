import { describe, expect, it } from 'vitest'
import type { BandModel } from '../../../src/science/photo/band-fit.ts'
import { bandResiduals } from '../../../src/science/photo/band-residuals.ts'
import { bandTables } from '../../../src/science/photo/band-tables.ts'
import { bandLand } from './band-land.ts'

const { samples, relative } = bandLand({ radiusRatio: 0.6, wanted: 200, gap: (x) => 3 * x })
const indexes = Array.from(samples.xs, (_, i) => i)
const tables = bandTables(samples, relative, { radiusRatio: 0.6, level: 1, indexes })
const model: BandModel = {
  gap: Float64Array.from([0.1, 2.8, 0.2, 0.1, -0.2, 0.05, 0, 0.1, 0]),
  background: Float64Array.from([0.02, 0.01]),
  swing: Float64Array.from([0.45, 0.02, 0, 0.01, 0, 0]),
  second: 0.05,
}

describe('bandResiduals', () => {
  it('leaves nothing of the bands it was made for but the noise', () => {
    const exact = { ...model, gap: Float64Array.from([0, 3]), background: new Float64Array(1) }
    const swing = Float64Array.from([0.5, 0, 0, 0, 0, 0])
    const { residuals } = bandResiduals(tables, { ...exact, swing, second: 0 })
    // Noise of 0.01; five standard deviations are not exceeded in 200 normal numbers.
    for (const residual of residuals) expect(Math.abs(residual)).toBeLessThan(0.05)
  })

  it('gives the derivatives that small steps give', () => {
    const h = 1e-6
    const at = bandResiduals(tables, model)
    const order = bandResiduals(tables, {
      ...model,
      gap: model.gap.map((value, k) => (k === 0 ? value + h : value)),
    })
    const swing = bandResiduals(tables, {
      ...model,
      swing: model.swing.map((value, k) => (k === 0 ? value + h : value)),
    })
    const second = bandResiduals(tables, { ...model, second: model.second + h })
    for (let i = 0; i < tables.count; i++) {
      const fall = (moved: Float64Array) => ((at.residuals[i] ?? 0) - (moved[i] ?? 0)) / h
      // Second derivatives of at most 40 times half a step, and rounding 1e-16 / 1e-6.
      expect(fall(order.residuals)).toBeCloseTo(at.slopes[i] ?? 0, 4)
      expect(fall(swing.residuals)).toBeCloseTo(at.waves[i] ?? 0, 4)
      expect(fall(second.residuals)).toBeCloseTo(at.seconds[i] ?? 0, 4)
    }
  })
})
