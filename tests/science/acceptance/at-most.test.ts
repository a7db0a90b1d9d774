import { describe, expect, it } from 'vitest'
import { atMost } from '../../../src/science/acceptance/at-most.ts'

describe('atMost', () => {
  it('forgives the rounding of the computer', () => {
    const value = (3 * 587.6) / 2000
    expect(value <= 0.8814).toBe(false) // what a plain comparison would say
    expect(atMost({ value, limit: 0.8814 })).toBe(true)
  })

  it.each([
    [1, 1, true],
    [1 + 5e-13, 1, true],
    [1 + 5e-12, 1, false],
    [-1 + 5e-13, -1, true],
    [-1, -2, false],
    [0, 0, true],
    [1e-300, 0, false],
    [-0, 0, true],
    [0.88, 0.881, true],
  ])('says of %d against %d: %s', (value, limit, kept) => {
    expect(atMost({ value, limit })).toBe(kept)
  })

  it('gives the same answer in every unit', () => {
    for (const factor of [1e-9, 1 / 0.0254, 1e6]) {
      expect(atMost({ value: 0.3 * 3 * factor, limit: 0.9 * factor })).toBe(true)
      expect(atMost({ value: 0.900001 * factor, limit: 0.9 * factor })).toBe(false)
    }
  })

  it.each([
    { value: Number.NaN, limit: 1 },
    { value: 1, limit: Number.NaN },
    { value: 1, limit: Number.POSITIVE_INFINITY },
  ])('refuses %o instead of comparing it', (input) => {
    expect(() => atMost(input)).toThrow(RangeError)
  })
})
