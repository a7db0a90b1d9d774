import { describe, expect, it } from 'vitest'
import { formatFixed } from '../../../src/science/rounding/format-fixed.ts'
import { seededUniform } from '../seeded-random.ts'

describe('formatFixed', () => {
  it.each([
    [1.005, 2, '1.01'], // toFixed says 1.00
    [8.575, 2, '8.58'], // toFixed says 8.57
    [0.5, 0, '1'],
    [1.5, 0, '2'],
    [2.5, 0, '3'],
    [-2.5, 0, '-3'],
    [-1.005, 2, '-1.01'],
    [-0, 2, '0.00'],
    [-0.004, 2, '0.00'],
    [-0.005, 2, '-0.01'],
    [0.05, 1, '0.1'],
    [99.995, 2, '100.00'],
    [12, 3, '12.000'],
    [1e21, 1, '1000000000000000000000.0'],
    [123456789012345680000, 0, '123456789012345680000'],
    [1e-10, 4, '0.0000'],
    [5e-324, 20, '0.00000000000000000000'],
  ])('prints %d with %d decimals as %s', (value, decimals, text) => {
    expect(formatFixed({ value, decimals })).toBe(text)
  })

  it('prints what was typed when nothing has to be rounded', () => {
    const uniform = seededUniform(3)
    for (let i = 0; i < 2000; i++) {
      const fraction = String(Math.floor(uniform() * 1000)).padStart(3, '0')
      const text = `${Math.floor(uniform() * 1e6)}.${fraction}`
      expect(formatFixed({ value: Number(text), decimals: 3 })).toBe(text)
    }
  })

  it('never differs from the value by more than half a unit', () => {
    const uniform = seededUniform(5)
    for (let i = 0; i < 2000; i++) {
      const value = (uniform() - 0.5) * 100
      // Half of 0.01 and the rounding of the subtraction.
      expect(Math.abs(Number(formatFixed({ value, decimals: 2 })) - value)).toBeLessThanOrEqual(
        0.005 + 1e-14,
      )
    }
  })

  it.each([
    { value: Number.NaN, decimals: 2 },
    { value: Number.POSITIVE_INFINITY, decimals: 2 },
    { value: 1, decimals: -1 },
    { value: 1, decimals: 1.5 },
    { value: 1, decimals: 21 },
  ])('refuses %o', (input) => {
    expect(() => formatFixed(input)).toThrow(RangeError)
  })
})
