import { describe, expect, it } from 'vitest'
import { readingBands } from '../../../src/science/surface/reading-bands.ts'

describe('readingBands', () => {
  it('takes a count as it is', () => {
    expect(readingBands({ directionDeg: 90, bands: 2.25 })).toBe(2.25)
  })

  it('takes bow over spacing', () => {
    // Textbook rule (from memory): 4.5 mm over 6 mm is 0.75 band.
    expect(readingBands({ directionDeg: 0, bowMm: 4.5, spacingMm: 6 })).toBe(0.75)
  })

  it.each([
    { directionDeg: Number.NaN, bands: 1 },
    { directionDeg: 361, bands: 1 },
    { directionDeg: 0, bands: -1 },
    { directionDeg: 0, bands: 1001 },
    { directionDeg: 0, bowMm: 1, spacingMm: 0 },
  ])('refuses %o', (reading) => {
    expect(() => readingBands(reading)).toThrow(RangeError)
  })
})
