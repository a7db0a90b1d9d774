import { describe, expect, it } from 'vitest'
import { formatSignificant } from '../../../src/science/rounding/format-significant.ts'
import { seededUniform } from '../seeded-random.ts'

describe('formatSignificant', () => {
  it.each([
    [0.0229921, 4, '0.02299'],
    [9.4332e-6, 3, '9.43e-6'],
    [9.996e-6, 3, '1.00e-5'],
    [0.00009996, 3, '0.000100'],
    [0.0001, 1, '0.0001'],
    [0.99951, 3, '1.00'],
    [9.995, 3, '10.0'],
    [773.7, 3, '774'],
    [773.7, 4, '773.7'],
    [123456, 3, '123000'],
    [9999999, 7, '9999999'],
    [1e7, 2, '1.0e7'],
    [9999999.6, 7, '1.000000e7'],
    [5, 1, '5'],
    [5e-9, 1, '5e-9'],
    [1.005, 3, '1.01'],
    [-0.02985, 3, '-0.0299'],
    [0, 4, '0'],
    [-0, 4, '0'],
    [12, 5, '12.000'],
  ])('prints %d with %d digits as %s', (value, digits, text) => {
    expect(formatSignificant({ value, digits })).toBe(text)
  })

  it('agrees with toPrecision wherever no half is near', () => {
    const uniform = seededUniform(21)
    for (let i = 0; i < 2000; i++) {
      const value = (uniform() + 0.1) * 10 ** Math.floor(uniform() * 20 - 10)
      expect(Number(formatSignificant({ value, digits: 5 }))).toBe(Number(value.toPrecision(5)))
    }
  })

  it.each([
    { value: Number.NaN, digits: 3 },
    { value: 1, digits: 0 },
    { value: 1, digits: 18 },
    { value: 1, digits: 2.5 },
  ])('refuses %o', (input) => {
    expect(() => formatSignificant(input)).toThrow(RangeError)
  })
})
