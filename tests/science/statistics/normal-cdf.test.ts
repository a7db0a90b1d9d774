import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../../src/science/statistics/normal-cdf.ts'
import { readReference } from '../read-reference.ts'

const { cdf } = readReference<{ cdf: { z: number; p: number }[] }>('statistics/normal-mpmath.json')

describe('normalCdf', () => {
  it.each(cdf)('agrees with 60-digit arithmetic at $z', ({ z, p }) => {
    // A few roundings of doubles; where a bell is below 1e-300 its own last digits are fewer.
    expect(Math.abs(normalCdf(z) / p - 1)).toBeLessThan(z < -37 ? 1e-13 : 3e-15)
  })

  it('is one with its mirror image', () => {
    for (let z = -6; z <= 6; z += 0.37) {
      // two roundings
      expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 15)
    }
  })

  it('rises everywhere, also where the series hands over to the fraction', () => {
    for (let z = -38; z < 5; z += 0.01) {
      expect(normalCdf(z + 0.01)).toBeGreaterThan(normalCdf(z))
    }
    // The density there is 0.242; 1e-9 to either side.
    expect(normalCdf(1) - normalCdf(1 - 1e-9)).toBeCloseTo(0.242e-9, 11)
    expect(normalCdf(-1 + 1e-9) - normalCdf(-1)).toBeCloseTo(0.242e-9, 11)
  })

  it('is 0 and 1 far out', () => {
    expect(normalCdf(-1e9)).toBe(0)
    expect(normalCdf(1e9)).toBe(1)
    expect(normalCdf(-Number.MAX_VALUE)).toBe(0)
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %s', (z) => {
    expect(() => normalCdf(z)).toThrow('normalCdf requires z as a finite number')
  })
})
