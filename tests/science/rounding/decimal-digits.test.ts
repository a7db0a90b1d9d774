import { describe, expect, it } from 'vitest'
import { decimalDigits } from '../../../src/science/rounding/decimal-digits.ts'
import { seededUniform } from '../seeded-random.ts'

describe('decimalDigits', () => {
  it.each([
    [1.005, false, 1005n, -3],
    [-1200, true, 12n, 2],
    [0, false, 0n, 0],
    [-0, false, 0n, 0],
    [5e-324, false, 5n, -324],
    [1.7976931348623157e308, false, 17976931348623157n, 292],
  ])('takes %d apart', (value, isNegative, coefficient, exponent) => {
    expect(decimalDigits(value)).toEqual({ isNegative, coefficient, exponent })
  })

  it('names the same double again', () => {
    const uniform = seededUniform(11)
    for (let i = 0; i < 2000; i++) {
      const value = (uniform() - 0.5) * 10 ** Math.floor(uniform() * 60 - 30)
      const { isNegative, coefficient, exponent } = decimalDigits(value)
      expect(Number(`${isNegative ? '-' : ''}${coefficient}e${exponent}`)).toBe(value)
    }
  })

  it('refuses what is not finite', () => {
    expect(() => decimalDigits(Number.NaN)).toThrow(RangeError)
  })
})
