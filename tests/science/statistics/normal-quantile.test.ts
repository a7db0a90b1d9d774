import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../../src/science/statistics/normal-cdf.ts'
import { normalQuantile } from '../../../src/science/statistics/normal-quantile.ts'
import { readReference } from '../read-reference.ts'

const { quantile } = readReference<{ quantile: { probability: number; z: number }[] }>(
  'statistics/normal-mpmath.json',
)

describe('normalQuantile', () => {
  it.each(quantile)('agrees with 60-digit arithmetic for $probability', ({ probability, z }) => {
    // A few roundings; near one half z itself is a difference, good to 1e-16 absolute.
    expect(Math.abs(normalQuantile(probability) - z)).toBeLessThan(5e-15 * Math.abs(z) + 2e-16)
  })

  it('undoes the distribution function', () => {
    for (let z = -8; z <= 0; z += 0.23) {
      // p carries a rounding, which a step of the tail turns into 1e-16 / z.
      expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThan(1e-14)
    }
  })

  it('is odd about one half', () => {
    for (const probability of [0.5, 0.25, 0.125, 2 ** -30]) {
      // these and their complements are exact doubles
      expect(normalQuantile(1 - probability)).toBeCloseTo(-normalQuantile(probability), 14)
    }
  })

  it.each([0, 1, -0.1, 1.1, Number.NaN])('refuses %s', (probability) => {
    expect(() => normalQuantile(probability)).toThrow('normalQuantile requires probability from')
  })
})
