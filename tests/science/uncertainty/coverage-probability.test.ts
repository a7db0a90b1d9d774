import { describe, expect, it } from 'vitest'
import { coverageFactor } from '../../../src/science/uncertainty/coverage-factor.ts'
import { coverageProbability } from '../../../src/science/uncertainty/coverage-probability.ts'

describe('coverageProbability', () => {
  it.each([
    // JCGM 100:2008, tables G.1 and G.2.
    [1, 0.6827],
    [1.645, 0.9],
    [1.96, 0.95],
    [2, 0.9545],
    [2.576, 0.99],
    [3, 0.9973],
  ])('says that k = %d covers %d of a normal distribution', (factor, probability) => {
    const known = {
      coverageFactor: factor,
      effectiveDegreesOfFreedom: Number.POSITIVE_INFINITY,
    }
    // The table's factors are printed to three decimals.
    expect(coverageProbability(known)).toBeCloseTo(probability, 3)
  })

  it('is the inverse of the coverage factor wherever that is Student’s t', () => {
    for (const effectiveDegreesOfFreedom of [1, 2.5, 4, 10, 50]) {
      const factor = coverageFactor(effectiveDegreesOfFreedom)
      const back = coverageProbability({ coverageFactor: factor, effectiveDegreesOfFreedom })
      expect(back).toBeCloseTo(0.95, 9) // the quantile is found by bisection
    }
  })

  it('has the closed form of one degree of freedom: 2/pi atan k', () => {
    const covered = coverageProbability({ coverageFactor: 12.706, effectiveDegreesOfFreedom: 1 })
    expect(covered).toBeCloseTo((2 / Math.PI) * Math.atan(12.706), 12) // rounding of doubles
  })

  it.each([
    { coverageFactor: 0, effectiveDegreesOfFreedom: 5 },
    { coverageFactor: 2, effectiveDegreesOfFreedom: 0.4 },
    { coverageFactor: Number.NaN, effectiveDegreesOfFreedom: 5 },
  ])('refuses %o', (input) => {
    expect(() => coverageProbability(input)).toThrow(RangeError)
  })
})
