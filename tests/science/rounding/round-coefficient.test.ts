import { describe, expect, it } from 'vitest'
import { roundCoefficient } from '../../../src/science/rounding/round-coefficient.ts'

describe('roundCoefficient', () => {
  it.each([
    [1005n, -3, -2, 101n],
    [1004n, -3, -2, 100n],
    [5n, -1, 0, 1n],
    [49n, -2, 0, 0n],
    [12n, 2, 0, 1200n],
    [7n, -9, 0, 0n],
    [0n, 0, -5, 0n],
  ])('counts %d x 10^%d in units of 10^%d as %d', (coefficient, exponent, unitExponent, count) => {
    expect(roundCoefficient({ coefficient, exponent, unitExponent })).toBe(count)
  })

  it.each([
    { coefficient: -1n, exponent: 0, unitExponent: 0 },
    { coefficient: 1n, exponent: 0.5, unitExponent: 0 },
    { coefficient: 1n, exponent: 0, unitExponent: 401 },
  ])('refuses case %#', (input) => {
    expect(() => roundCoefficient(input)).toThrow(RangeError)
  })
})
