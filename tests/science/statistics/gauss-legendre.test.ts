import { describe, expect, it } from 'vitest'
import { gaussLegendre } from '../../../src/science/statistics/gauss-legendre.ts'

describe('gaussLegendre', () => {
  it.each([0, 1, 2, 7, 20, 39])('integrates the power %s exactly', (power) => {
    // Exact up to degree 39; what is left are the roundings of twenty terms.
    const got = gaussLegendre({ f: (x) => x ** power, from: 0, to: 1 })
    expect(Math.abs(got * (power + 1) - 1)).toBeLessThan(1e-13)
  })

  it('is not exact at degree 40, so that the number of points is what it says', () => {
    const error = (power: number) =>
      Math.abs(gaussLegendre({ f: (x) => x ** power, from: -1, to: 1 }) - 2 / (power + 1))
    // The rule's error term at degree 40 is 2^41 (20!)^4 / (41 (40!)^2) = 1.9e-12... roundings 1e-15
    expect(error(38)).toBeLessThan(1e-14)
    expect(error(40)).toBeGreaterThan(1e-13)
  })

  it('gives known integrals of smooth functions', () => {
    // Closed forms; twenty points leave only roundings here.
    expect(gaussLegendre({ f: Math.exp, from: 0, to: 1 })).toBeCloseTo(Math.E - 1, 14)
    expect(gaussLegendre({ f: Math.sin, from: 0, to: Math.PI })).toBeCloseTo(2, 14)
  })

  it('turns its sign with its ends and adds up over pieces', () => {
    const f = Math.cos
    const whole = gaussLegendre({ f, from: -1, to: 2 })
    expect(gaussLegendre({ f, from: 2, to: -1 })).toBeCloseTo(-whole, 14) // roundings
    const parts = gaussLegendre({ f, from: -1, to: 0.3 }) + gaussLegendre({ f, from: 0.3, to: 2 })
    expect(parts).toBeCloseTo(whole, 14) // roundings
  })

  it('refuses ends and functions without a number', () => {
    const f = () => 1
    expect(() => gaussLegendre({ f, from: Number.NaN, to: 1 })).toThrow(RangeError)
    expect(() => gaussLegendre({ f, from: 0, to: Number.POSITIVE_INFINITY })).toThrow(RangeError)
    expect(() => gaussLegendre({ f: () => Number.NaN, from: 0, to: 1 })).toThrow(RangeError)
  })
})
