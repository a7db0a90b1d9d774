import { describe, expect, it } from 'vitest'
import { repeatedReadings } from '../../../src/science/statistics/repeated-readings.ts'
import { seededUniform } from '../seeded-random.ts'

/** Twenty readings of a temperature in °C, JCGM 100:2008, table 1. */
const guide = [
  96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
  100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
]

describe('repeatedReadings', () => {
  it('gives the mean 100.145 and s 1.489 of the twenty temperatures of JCGM 100:2008, 4.4.3', () => {
    const result = repeatedReadings(guide)
    expect(result.mean).toBeCloseTo(100.145, 3) // printed digits
    expect(result.standardDeviation).toBeCloseTo(1.489, 3) // printed digits
    expect(result.degreesOfFreedom).toBe(19)
  })

  it('gives half the difference times the root of two for a pair', () => {
    const { mean, standardDeviation } = repeatedReadings([2, 2.25])
    expect(mean).toBe(2.125)
    expect(standardDeviation).toBeCloseTo(0.25 / Math.SQRT2, 15) // rounding of doubles
  })

  it('gives no scatter where all are alike', () => {
    expect(repeatedReadings([2.1, 2.1, 2.1]).standardDeviation).toBe(0)
  })

  it('agrees with the sum of all pairs: s^2 = sum of (x - y)^2 / (2 n (n - 1)), shifted too', () => {
    const uniform = seededUniform(8)
    const readings = Array.from({ length: 9 }, () => 1e6 + uniform())
    let sum = 0
    for (const x of readings) for (const y of readings) sum += (x - y) ** 2
    const expected = Math.sqrt(sum / (2 * 9 * 8))
    // 1e6 of shift leaves about 1e-10 of doubles.
    expect(repeatedReadings(readings).standardDeviation).toBeCloseTo(expected, 8)
  })

  it.each([[[]], [[1]], [[1, Number.NaN]]])('refuses %o', (readings) => {
    expect(() => repeatedReadings(readings)).toThrow(RangeError)
  })
})
