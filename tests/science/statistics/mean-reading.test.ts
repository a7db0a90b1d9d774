import { describe, expect, it } from 'vitest'
import { meanReading } from '../../../src/science/statistics/mean-reading.ts'
import { readReference } from '../read-reference.ts'

describe('meanReading', () => {
  it('gives the mean of twenty temperatures with 0.33 C, JCGM 100:2008, 4.4.3', () => {
    const readings = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
      100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
    ]
    const { mean, standardUncertainty, degreesOfFreedom } = meanReading(readings)
    expect(mean).toBeCloseTo(100.145, 3) // printed digits
    expect(standardUncertainty).toBeCloseTo(0.333, 3) // printed digits
    expect(degreesOfFreedom).toBe(19)
  })

  it('keeps the digits of the certified deviations of NIST', () => {
    const certified = [
      // NIST StRD, univariate: 13 and 14 digits can be had from decimal data in doubles.
      { id: 'Mavro', mean: 2.001856, deviation: 0.000429123454003053, count: 50 },
      { id: 'Michelso', mean: 299.8524, deviation: 0.0790105478190518, count: 100 },
    ]
    const sets = readReference<{ id: string; values: number[] }[]>('statistics/lag-one.json')
    for (const { id, mean, deviation, count } of certified) {
      const found = meanReading(sets.find((set) => set.id === id)?.values ?? [])
      expect(Math.abs(found.mean / mean - 1)).toBeLessThan(1e-14)
      const u = deviation / Math.sqrt(count)
      expect(Math.abs((found.standardUncertainty ?? 0) / u - 1)).toBeLessThan(1e-12)
    }
  })

  it('keeps them for values that differ in the eighth digit, NIST StRD NumAcc1 and NumAcc4', () => {
    expect(meanReading([10_000_001, 10_000_003, 10_000_002])).toEqual({
      mean: 10_000_002,
      standardUncertainty: 1 / Math.sqrt(3),
      degreesOfFreedom: 2,
    })
    // NumAcc4: 10 000 000.2 and then 500 times .1 and .3; mean .2 and deviation 0.1 are certified.
    const values = [10_000_000.2]
    for (let i = 0; i < 500; i++) values.push(10_000_000.1, 10_000_000.3)
    const { mean, standardUncertainty } = meanReading(values)
    expect(Math.abs(mean / 10_000_000.2 - 1)).toBeLessThan(1e-15)
    // The decimals are no doubles: 8.3 digits can be had at best.
    expect(standardUncertainty).toBeCloseTo(0.1 / Math.sqrt(1001), 9)
  })

  it('knows no scatter of a single reading', () => {
    expect(meanReading([41])).toEqual({
      mean: 41,
      standardUncertainty: null,
      degreesOfFreedom: null,
    })
  })

  it('halves with four times as many readings of one scatter', () => {
    const u = (count: number) =>
      meanReading(Array.from({ length: 2 * count }, (_, i) => i % 2)).standardUncertainty ?? 0
    // s^2 is n / 4 / (n - 1), so that n - 1 stands for n.
    expect(u(10) / u(40)).toBeCloseTo(Math.sqrt(79 / 19), 12) // rounding
  })

  it.each([[[]], [[Number.NaN]], [[1, Number.POSITIVE_INFINITY]]])('refuses %o', (readings) => {
    expect(() => meanReading(readings)).toThrow(RangeError)
  })
})
