import { describe, expect, it } from 'vitest'
import { budgetLine } from '../../../src/science/uncertainty/budget-line.ts'
import { leakUncertainty } from '../../../src/science/uncertainty/leak-uncertainty.ts'

const known = budgetLine({ source: 'volume', value: 3, distribution: 'normal', sensitivity: 1 })
const fitted = {
  source: 'slope',
  value: 4,
  distribution: 'normal',
  sensitivity: 1,
  degreesOfFreedom: 10,
} as const

describe('leakUncertainty', () => {
  it('uses the factor 2 when everything is known', () => {
    expect(leakUncertainty([known])).toEqual({
      standardUncertaintyPaM3PerS: 3,
      expandedUncertaintyPaM3PerS: 6,
      coverageFactor: 2,
      budget: [known],
    })
  })

  it('uses Student t with the effective degrees of freedom of a short trace', () => {
    // Only the fit with 10: NIST/SEMATECH e-Handbook prints 2.228.
    expect(leakUncertainty([budgetLine(fitted)]).coverageFactor).toBeCloseTo(2.228, 3)
    // 5^4 / (4^4 / 10) = 24.4 effective: t is 2.062 (recomputed with SciPy 1.17: 2.0621).
    const both = leakUncertainty([known, budgetLine(fitted)])
    expect(both.standardUncertaintyPaM3PerS).toBe(5)
    expect(both.coverageFactor).toBeCloseTo(2.062, 3)
    expect(both.expandedUncertaintyPaM3PerS).toBe(5 * both.coverageFactor)
  })

  it('refuses an empty budget', () => {
    expect(() => leakUncertainty([])).toThrow(RangeError)
  })
})
