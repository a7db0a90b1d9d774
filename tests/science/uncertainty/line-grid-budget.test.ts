import { describe, expect, it } from 'vitest'
import { countedFlatnessBudget } from '../../../src/science/uncertainty/counted-flatness-budget.ts'
import { lineGridBudget } from '../../../src/science/uncertainty/line-grid-budget.ts'

const bandHeightUm = 0.2938
const least = { bandHeightUm, flatnessUm: 0.5876 }

describe('lineGridBudget', () => {
  it('adds two readings and what lies between crossings in quadrature', () => {
    // By hand: a = 0.1 band: 0.1 / sqrt 3 * sqrt 2 * h, and 0.2 h.
    const byHand = bandHeightUm * Math.sqrt(0.02 / 3 + 0.04)
    const { standardUncertaintyUm } = lineGridBudget({ ...least, readingHalfWidthBands: 0.1 })
    expect(standardUncertaintyUm).toBeCloseTo(byHand, 12) // rounding alone
  })

  it('has every line of a count of two directions and one more', () => {
    const stated = { ...least, opticalFlatToleranceUm: 0.05, viewingAngleLimitDeg: 10 }
    const counted = countedFlatnessBudget({ ...stated, isSumOfTwoDirections: true })
    const { budget } = lineGridBudget(stated)
    expect(budget.slice(0, -1)).toEqual(counted.budget)
    expect(budget.at(-1)).toMatchObject({ source: 'between-crossings', value: 0.2 })
  })

  it('is known beforehand, so k is 2, and grows with what is not seen', () => {
    const usual = lineGridBudget(least)
    expect(usual.coverageFactor).toBe(2)
    expect(usual.expandedUncertaintyUm).toBe(2 * usual.standardUncertaintyUm)
    const worse = lineGridBudget({ ...least, betweenCrossingsBands: 0.34 })
    expect(worse.standardUncertaintyUm).toBeGreaterThan(usual.standardUncertaintyUm)
    const seen = lineGridBudget({ ...least, betweenCrossingsBands: 0, readingHalfWidthBands: 0 })
    expect(seen.standardUncertaintyUm).toBe(0)
  })

  it('refuses what it can not answer', () => {
    expect(() => lineGridBudget({ ...least, betweenCrossingsBands: -1 })).toThrow(
      'lineGridBudget requires betweenCrossingsBands from 0 to 100, got -1',
    )
    expect(() => lineGridBudget({ ...least, bandHeightUm: 0 })).toThrow(RangeError)
  })
})
