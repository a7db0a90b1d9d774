import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'

const of = (...contributions: number[]) =>
  combinedStandardUncertainty(contributions.map((contribution) => ({ contribution })))

describe('combinedStandardUncertainty', () => {
  it('adds in quadrature', () => {
    expect(of(3, 4)).toBe(5)
    expect(of(7)).toBe(7)
  })

  it('gives the 1.03 percent of the example of three inputs', () => {
    // JCGM 100:2008 G.4.2 (from memory, recomputed): 0.25, 0.57 and 0.82 % give 1.03 %.
    expect(of(0.25, 0.57, 0.82)).toBeCloseTo(1.03, 2)
  })

  it('never falls below its largest part and does not depend on order', () => {
    expect(of(1, 2, 3)).toBeGreaterThanOrEqual(3)
    expect(of(1, 2, 3)).toBeCloseTo(of(3, 1, 2), 14) // order of rounding
  })

  it('refuses an empty budget instead of calling it certain', () => {
    expect(() => of()).toThrow(RangeError)
  })
})
