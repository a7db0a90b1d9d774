import { describe, expect, test } from 'vitest'
import { repeatabilityOf } from '../../src/domain/repeatability-of.ts'

const counted = (...bands: readonly number[]) => ({
  pattern: 'convex' as const,
  directions: bands.map((one, index) => ({
    directionDeg: index * 90,
    bands: one,
    bandsTyped: String(one),
  })),
})
const repeated = (...bands: readonly number[]) => ({
  repeats: bands.map((one) => ({ bands: one, typed: String(one) })),
  repeatability: null,
})

describe('the scatter of counts', () => {
  // s of 2, 2.25, 2.5 is 0.25: (0.25^2 + 0 + 0.25^2) / 2.
  const three = repeated(2, 2.25, 2.5)

  test('is that of one count, with a degree of freedom less than there are repeats', () => {
    expect(repeatabilityOf(three, counted(2, 1))).toEqual({
      standardDeviationBands: 0.25,
      count: 1,
      degreesOfFreedom: 2,
    })
  })

  test('is that of a mean where the result is the mean of the repeats, as typed', () => {
    expect(repeatabilityOf(three, counted(1, 2.25))?.count).toBe(3)
    // 6.25 / 3 = 2.0833, typed to hundredths.
    const rounded = repeated(2, 2.25, 2)
    expect(repeatabilityOf(rounded, counted(2.08))?.count).toBe(3)
    expect(repeatabilityOf(rounded, counted(2.1))?.count).toBe(1)
  })

  test('stays that of one count for a saddle, which adds a count that was not repeated', () => {
    expect(repeatabilityOf(three, { ...counted(2.25, 1), pattern: 'saddle' })?.count).toBe(1)
  })

  test('is the one that was known where nothing was repeated, or not known at all', () => {
    const known = { standardDeviationBands: 0.15, count: 3, degreesOfFreedom: null }
    expect(repeatabilityOf({ repeats: [], repeatability: known }, counted(2))).toEqual(known)
    expect(repeatabilityOf({ repeats: [], repeatability: null }, counted(2))).toBeNull()
  })
})
