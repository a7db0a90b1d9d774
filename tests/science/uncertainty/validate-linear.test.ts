import { describe, expect, it } from 'vitest'
import { validateLinear } from '../../../src/science/uncertainty/validate-linear.ts'

const compare = (expandedUncertainty: number, standardUncertainty: number, end: number) =>
  validateLinear({ value: 0, expandedUncertainty, standardUncertainty, low: -end, high: end })

describe('validateLinear', () => {
  it('judges the three additive models of JCGM 101:2008, 9.2, as its tables do (from memory)', () => {
    // Four standard normals: both intervals ±3.92, u 2.0, so that d is 0.05.
    expect(compare(3.92, 2.0, 3.92)).toMatchObject({ isValid: true, tolerance: 0.05 })
    // Four rectangulars of u 1: ±3.92 against ±3.88.
    expect(compare(3.92, 2.0, 3.88).isValid).toBe(true)
    // One of them ten times as wide: ±19.9 against ±17.0, u 10.1, d 0.5.
    expect(compare(19.9, 10.1, 17)).toMatchObject({ isValid: false, tolerance: 0.5 })
  })

  it('takes the tolerance from the second digit of u as printed', () => {
    // JCGM 101:2008, 7.9.2, example 1: 0.000 35 is 35 x 10^-5, d is half of 10^-5.
    expect(compare(1, 0.00035, 1).tolerance).toBeCloseTo(0.5e-5, 18) // rounding of doubles
    // Example 2: 2 K to one digit would be 0.5 K; to two digits, 2.0, it is 0.05 K.
    expect(compare(1, 2, 1).tolerance).toBeCloseTo(0.05, 12) // rounding of doubles
    expect(compare(1, 0.0996, 1).tolerance).toBeCloseTo(0.005, 12) // rounding of doubles
  })

  it('asks both ends: a lopsided distribution fails at one of them', () => {
    const lopsided = { value: 1, expandedUncertainty: 0.2, standardUncertainty: 0.1 }
    expect(validateLinear({ ...lopsided, low: 0.8, high: 1.2 }).isValid).toBe(true)
    expect(validateLinear({ ...lopsided, low: 0.8, high: 1.21 }).isValid).toBe(false)
    const low = validateLinear({ ...lopsided, low: 0.79, high: 1.2 })
    expect(low.isValid).toBe(false)
    expect([low.lowDifference, low.highDifference]).toEqual([
      expect.closeTo(0.01, 12), // rounding of doubles
      expect.closeTo(0, 12), // rounding of doubles
    ])
  })

  it('follows a change of unit', () => {
    const input = { value: 5, expandedUncertainty: 2, standardUncertainty: 1, low: 3.2, high: 7 }
    const entries = Object.entries(input).map(([key, number]) => [key, number * 1000] as const)
    const scaled = Object.fromEntries(entries) as typeof input
    const [small, large] = [validateLinear(input), validateLinear(scaled)]
    expect(large.isValid).toBe(small.isValid)
    // rounding of doubles
    expect(large.lowDifference).toBeCloseTo(small.lowDifference * 1000, 9)
    expect(large.tolerance).toBeCloseTo(small.tolerance * 1000, 9) // rounding of doubles
  })

  it.each([
    { value: 0, expandedUncertainty: -1, standardUncertainty: 1, low: 0, high: 0 },
    { value: 0, expandedUncertainty: 1, standardUncertainty: 0, low: 0, high: 0 },
    { value: Number.NaN, expandedUncertainty: 1, standardUncertainty: 1, low: 0, high: 0 },
    { value: 0, expandedUncertainty: 1, standardUncertainty: 1, low: Number.NaN, high: 0 },
  ])('refuses %o', (input) => {
    expect(() => validateLinear(input)).toThrow(RangeError)
  })
})
