import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { repeatedReadingLines } from '../../../src/science/uncertainty/repeated-reading-lines.ts'
import { repeatedReadingModel } from '../../../src/science/uncertainty/repeated-reading-model.ts'
import { linearByDifferences } from '../linear-by-differences.ts'

const known = { readingsUm: [40, 42, 41, 41], resolutionUm: 1, largestErrorUm: 3 }

describe('repeatedReadingModel', () => {
  it.each([false, true])('gives mean and u of the lines, difference %s', (isDifference) => {
    const { value, u } = linearByDifferences(repeatedReadingModel(known, isDifference))
    expect(value).toBe(41)
    const figure = { scatterSource: 'repeatability', isDifference, perUm: 1 } as const
    const expected = combinedStandardUncertainty(repeatedReadingLines(known, figure))
    expect(Math.abs(u / expected - 1)).toBeLessThan(1e-9) // differences of a straight function
  })

  it('has one error for each reading of a difference', () => {
    expect(repeatedReadingModel(known, false).expression).toBe(
      'meanUm + resolutionUm + instrumentUm',
    )
    expect(repeatedReadingModel(known, true).expression).toBe(
      'meanUm + resolutionFirstUm - resolutionSecondUm + instrumentFirstUm - instrumentSecondUm',
    )
  })

  it('has calibration and error of the instrument side by side', () => {
    const found = { readingsUm: [40], standardUncertaintyUm: 2, largestErrorUm: 3 }
    const model = repeatedReadingModel(found, false)
    expect(model.expression).toBe('meanUm + calibrationUm + instrumentUm')
    expect(linearByDifferences(model).u).toBeCloseTo(Math.sqrt(7), 8) // differences, straight
  })

  it('draws the mean from t with one degree of freedom less than readings', () => {
    const [mean] = repeatedReadingModel(known, true).quantities
    expect(mean).toMatchObject({ name: 'meanUm', value: 41, distribution: 't' })
    expect(mean?.degreesOfFreedom).toBe(3)
    expect(mean?.standardUncertainty).toBeCloseTo(0.40825, 5) // sqrt(2 / 3) / 2 by hand
  })

  it('keeps a single reading as a constant', () => {
    const { quantities } = repeatedReadingModel({ readingsUm: [40] }, true)
    expect(quantities).toEqual([
      expect.objectContaining({ name: 'meanUm', value: 40, standardUncertainty: 0 }),
    ])
  })

  it('refuses what the lines refuse', () => {
    expect(() => repeatedReadingModel({ readingsUm: [] }, false)).toThrow(RangeError)
  })
})
