import { describe, expect, it } from 'vitest'
import { autocorrelationCorrection } from '../../../src/science/statistics/autocorrelation-correction.ts'
import { fitLine } from '../../../src/science/statistics/fit-line.ts'
import { studentTQuantile } from '../../../src/science/statistics/student-t-quantile.ts'
import { readReference } from '../read-reference.ts'
import { seededAutoregressive } from '../seeded-random.ts'

interface Case {
  id: string
  input: {
    t: number[]
    y: number[]
    V: number
    sigma: number
    dt: number
    n: number
    rho: number
    z: number
  }
  expect: { r1: number; seAR: number }
}
const cases = readReference<Case[]>('leak/decay-cases.json')

describe('autocorrelationCorrection', () => {
  it('gives the reference standard error of an autocorrelated slope', () => {
    const row = cases.find((c) => c.id === 'ar-line-a')
    if (row === undefined) throw new Error('the case ar-line-a is missing')
    const line = fitLine({ x: row.input.t, y: row.input.y })
    const { varianceInflation } = autocorrelationCorrection({
      residuals: line.residuals,
      biasTerms: 1,
    })
    // Independent library, ten digits.
    expect(
      Math.abs((line.slopeStandardError * Math.sqrt(varianceInflation)) / row.expect.seAR - 1),
    ).toBeLessThan(1e-9)
  })

  it('gives the reference detection limit of a slope', () => {
    const row = cases.find((c) => c.id === 'mdls-1')
    if (row === undefined) throw new Error('the case mdls-1 is missing')
    const { V, sigma, dt, n, rho, z } = row.input
    const x = Array.from({ length: n }, (_, i) => (i * dt) / (n - 1))
    const { slopePerNoise } = fitLine({ x, y: x.map((_, i) => i % 2) })
    const limit = z * V * sigma * Math.sqrt((1 + rho) / (1 - rho)) * slopePerNoise
    // Closed form of Sxx for even spacing; rounding only.
    expect(Math.abs(limit / (row.expect as unknown as number) - 1)).toBeLessThan(1e-12)
  })

  it('never shrinks an uncertainty and never becomes infinite', () => {
    const zigzag = [1, -1, 1, -1, 1, -1, 1, -1]
    expect(autocorrelationCorrection({ residuals: zigzag, biasTerms: 1 })).toEqual({
      correlation: 0,
      varianceInflation: 1,
      effectiveCount: 8,
    })
    const ramp = Array.from({ length: 8 }, (_, i) => i)
    const { correlation, varianceInflation } = autocorrelationCorrection({
      residuals: ramp,
      biasTerms: 2,
    })
    expect(correlation).toBe(0.99)
    expect(varianceInflation).toBeCloseTo(199, 8) // 1.99 / 0.01
  })

  it.each([
    [0, 0.92],
    [0.5, 0.9],
    [0.8, 0.87],
  ])(
    'covers the true slope at a correlation of %d about as often as promised',
    (correlation, least) => {
      // 400 seeded traces of 120 readings. Stated coverage 95, 94 and 93 %; the standard error of a
      // rate from 400 is 1.2 %, so at least 2.5 of those below and no worse.
      const x = Array.from({ length: 120 }, (_, i) => i)
      let covered = 0
      for (let run = 0; run < 400; run++) {
        const noise = seededAutoregressive(1000 + run, correlation)
        const line = fitLine({ x, y: x.map(() => noise()) })
        const { varianceInflation, effectiveCount } = autocorrelationCorrection({
          residuals: line.residuals,
          biasTerms: 1,
        })
        const degreesOfFreedom = Math.max(1, effectiveCount - 2)
        const t = studentTQuantile({ probability: 0.975, degreesOfFreedom })
        if (Math.abs(line.slope) <= t * line.slopeStandardError * Math.sqrt(varianceInflation))
          covered++
      }
      expect(covered / 400).toBeGreaterThan(least)
      expect(covered / 400).toBeLessThan(0.99)
    },
  )

  it('refuses too few residuals', () => {
    expect(() => autocorrelationCorrection({ residuals: [1, 2], biasTerms: 1 })).toThrow(RangeError)
    expect(() => autocorrelationCorrection({ residuals: [1, 2, 3], biasTerms: -1 })).toThrow(
      RangeError,
    )
  })
})
