import { describe, expect, it } from 'vitest'
import { edgeWave } from '../../../src/science/photo/edge-wave.ts'

describe('edgeWave', () => {
  it('is the sum of its waves', () => {
    const wave = [0.1, 0.2, -0.3, 0.4, 0.5] as const
    for (const t of [0, 0.7, 2, -1.3]) {
      const sum =
        0.1 + 0.2 * Math.cos(t) - 0.3 * Math.sin(t) + 0.4 * Math.cos(2 * t) + 0.5 * Math.sin(2 * t)
      expect(edgeWave(wave, t)).toBeCloseTo(sum, 14) // double-angle formulas, rounding only
    }
  })

  it('describes a shifted circle to first order', () => {
    // The circle about (d, 0): r = d cos t + sqrt(1 - d^2 sin^2 t), off by at most d^2 / 2.
    const d = 0.01
    for (let t = 0; t < 6; t++) {
      const exact = d * Math.cos(t) + Math.sqrt(1 - (d * Math.sin(t)) ** 2) - 1
      expect(Math.abs(edgeWave([0, d, 0, 0, 0], t) - exact)).toBeLessThanOrEqual(d * d * 0.51)
    }
  })
})
