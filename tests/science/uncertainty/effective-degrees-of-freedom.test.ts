import { describe, expect, it } from 'vitest'
import { effectiveDegreesOfFreedom } from '../../../src/science/uncertainty/effective-degrees-of-freedom.ts'

describe('effectiveDegreesOfFreedom', () => {
  it('gives 19.0 for the example of three inputs', () => {
    // JCGM 100:2008 G.4.2 (from memory, recomputed): 0.25, 0.57, 0.82 % with 9, 4, 14.
    const lines = [
      { contribution: 0.25, degreesOfFreedom: 9 },
      { contribution: 0.57, degreesOfFreedom: 4 },
      { contribution: 0.82, degreesOfFreedom: 14 },
    ]
    expect(effectiveDegreesOfFreedom(lines)).toBeCloseTo(19.0, 1)
  })

  it('gives the count of a single line, whatever known lines weigh nothing', () => {
    const one = { contribution: 2, degreesOfFreedom: 7 }
    expect(effectiveDegreesOfFreedom([one])).toBeCloseTo(7, 12) // rounding only
    expect(effectiveDegreesOfFreedom([one, { contribution: 0, degreesOfFreedom: 1 }])).toBeCloseTo(
      7,
      12,
    )
  })

  it('is infinite when everything is known, and rises with a known line', () => {
    expect(effectiveDegreesOfFreedom([{ contribution: 1, degreesOfFreedom: null }])).toBe(
      Number.POSITIVE_INFINITY,
    )
    const small = { contribution: 1, degreesOfFreedom: 3 }
    // Equal known and unknown parts: 2^2 times the count.
    expect(
      effectiveDegreesOfFreedom([small, { contribution: 1, degreesOfFreedom: null }]),
    ).toBeCloseTo(12, 10)
  })

  it('refuses an empty budget', () => {
    expect(() => effectiveDegreesOfFreedom([])).toThrow(RangeError)
  })
})
