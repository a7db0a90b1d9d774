import { describe, expect, it } from 'vitest'
import { coverageFactor } from '../../../src/science/uncertainty/coverage-factor.ts'

describe('coverageFactor', () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.2, column 0.975 (three decimals).
  it.each([
    [1, 12.706],
    [2, 4.303],
    [10, 2.228],
    [30, 2.042],
  ])('takes Student t for %d degrees of freedom', (degreesOfFreedom, factor) => {
    expect(Math.abs(coverageFactor(degreesOfFreedom) - factor)).toBeLessThan(0.00051)
  })

  it.each([120, 1e9, Number.POSITIVE_INFINITY])(
    'is 2 for %d degrees of freedom',
    (degreesOfFreedom) => {
      expect(coverageFactor(degreesOfFreedom)).toBe(2)
    },
  )

  it.each([0, Number.NaN])('refuses %d', (degreesOfFreedom) => {
    expect(() => coverageFactor(degreesOfFreedom)).toThrow(RangeError)
  })
})
