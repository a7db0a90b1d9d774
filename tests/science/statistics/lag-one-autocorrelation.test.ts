import { describe, expect, it } from 'vitest'
import { lagOneAutocorrelation } from '../../../src/science/statistics/lag-one-autocorrelation.ts'
import { readReference } from '../read-reference.ts'

const sets =
  readReference<{ id: string; values: number[]; lagOne: number }[]>('statistics/lag-one.json')

describe('lagOneAutocorrelation', () => {
  it.each(sets)('gives the certified value of $id', (set) => {
    // NIST StRD, 15 digits; the decimal data are not exact doubles: about 13 digits can be had.
    expect(Math.abs(lagOneAutocorrelation(set.values) - set.lagOne)).toBeLessThan(1e-12)
  })

  it('does not change with level or scale, and is negative for a zigzag', () => {
    const values = [1, 4, 2, 8, 5, 7]
    expect(lagOneAutocorrelation(values.map((v) => 100 - 3 * v))).toBeCloseTo(
      lagOneAutocorrelation(values),
      12,
    ) // rounding
    expect(lagOneAutocorrelation([1, -1, 1, -1, 1, -1])).toBeCloseTo(-5 / 6, 14)
  })

  it('gives 0 for equal values', () => {
    expect(lagOneAutocorrelation([5, 5, 5])).toBe(0)
  })

  it('refuses fewer than three values', () => {
    expect(() => lagOneAutocorrelation([1, 2])).toThrow(RangeError)
  })
})
