import { describe, expect, it } from 'vitest'
import { roundForPrint } from '../../../src/science/rounding/round-for-print.ts'
import { seededUniform } from '../seeded-random.ts'

describe('roundForPrint', () => {
  it.each([
    [1.005, 2, 1.01],
    [-1.005, 2, -1.01],
    [2.675, 2, 2.68],
    [0.88134, 3, 0.881],
    [1e300, 2, 1e300],
  ])('rounds %d to %d decimals as %d', (value, decimals, rounded) => {
    expect(roundForPrint({ value, decimals })).toBe(rounded)
  })

  it.each([-0, -0.0049, 0.0049])('gives plain zero for %d', (value) => {
    expect(Object.is(roundForPrint({ value, decimals: 2 }), 0)).toBe(true)
  })

  it('is odd, and changes nothing the second time', () => {
    const uniform = seededUniform(8)
    for (let i = 0; i < 1000; i++) {
      const value = uniform() * 1000 + 1
      const rounded = roundForPrint({ value, decimals: 3 })
      expect(roundForPrint({ value: -value, decimals: 3 })).toBe(-rounded)
      expect(roundForPrint({ value: rounded, decimals: 3 })).toBe(rounded)
    }
  })

  it('refuses what is not a number', () => {
    expect(() => roundForPrint({ value: Number.NaN, decimals: 2 })).toThrow(RangeError)
  })
})
