import { describe, expect, it } from 'vitest'
import { marksUncertainty } from '../../../src/science/marks/marks-uncertainty.ts'

/** One term, 1 and -1 by turns: peak to valley is twice its coefficient. */
const grid = { radii: [1], angleCount: 4, termCount: 1, basis: new Float64Array([1, -1, 1, -1]) }
const fitted = (value: number, sd: number) => ({
  gap: new Float64Array([0, value]),
  lower: new Float64Array([1, 0, 0, 1 / sd]),
})

describe('marksUncertainty', () => {
  it('gives the sd of the peak to valley: twice that of its one coefficient', () => {
    // 60 draws know a standard deviation to about 1 / sqrt(118) = 9 %; three of these.
    const { fitSdBands } = marksUncertainty(fitted(5, 0.2), grid)
    expect(Math.abs(fitSdBands / 0.4 - 1)).toBeLessThan(0.28)
  })

  it('is never below 0.35 band', () => {
    expect(marksUncertainty(fitted(5, 1e-6), grid).expandedBands).toBe(0.35)
  })

  it('is 2.6 times the sd above that, and goes with it', () => {
    const one = marksUncertainty(fitted(50, 0.3), grid)
    expect(one.expandedBands).toBeCloseTo(2.6 * one.fitSdBands, 12) // rounding
    const twice = marksUncertainty(fitted(50, 0.6), grid)
    expect(twice.fitSdBands).toBeCloseTo(2 * one.fitSdBands, 10) // the same draws, rounding
  })

  it('draws the same numbers every time', () => {
    expect(marksUncertainty(fitted(1, 0.2), grid)).toEqual(marksUncertainty(fitted(1, 0.2), grid))
  })
})
