import { describe, expect, it } from 'vitest'
import { logGamma } from '../../../src/science/statistics/log-gamma.ts'
import { readReference } from '../read-reference.ts'

const cases = readReference<{ x: number; logGamma: number }[]>('statistics/log-gamma-scipy.json')

describe('logGamma', () => {
  it.each(cases)('agrees with SciPy at $x', (row) => {
    // The series is good to about 14 digits.
    expect(Math.abs(logGamma(row.x) / row.logGamma - 1)).toBeLessThan(2e-14)
  })

  it('gives the factorials', () => {
    let factorial = 1
    for (let n = 1; n <= 20; n++) {
      factorial *= n
      expect(Math.exp(logGamma(n + 1)) / factorial).toBeCloseTo(1, 12) // exponential of about 42
    }
  })

  it.each([0, -1, Number.NaN])('refuses %d', (x) => {
    expect(() => logGamma(x)).toThrow(RangeError)
  })
})
