import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { photoFlatnessBudget } from '../../../src/science/uncertainty/photo-flatness-budget.ts'

const parts = {
  statistical: 0.02,
  form: 0.01,
  edge: 0.03,
  perspective: 0.04,
  view: 0,
  floor: 0.015,
}
const input = { parts, bandHeightUm: 0.3, flatnessUm: 0.6, wavelengthNm: 600 }

describe('photoFlatnessBudget', () => {
  it('takes each part of the reading times the height of a band', () => {
    const lines = photoFlatnessBudget(input)
    expect(lines.map((one) => one.source)).toEqual([
      'photo-statistical',
      'photo-form',
      'photo-edge',
      'photo-perspective',
      'photo-view',
      'photo-floor',
    ])
    // By hand: 0.3 · √(0.02² + 0.01² + 0.03² + 0.04² + 0.015²) = 0.3 · √0.003225 = 0.0170367.
    expect(combinedStandardUncertainty(lines)).toBeCloseTo(0.0170367, 7) // to the digits worked
  })

  it('adds flat and lamp as rectangular, by hand', () => {
    const known = { opticalFlatToleranceUm: 0.03, wavelengthHalfWidthNm: 0.6 }
    const lines = photoFlatnessBudget({ ...input, ...known }).slice(6)
    // 0.03 / √3 = 0.0173205; 0.6 / 600 · 0.6 / √3 = 0.000346410 (JCGM 100:2008, 4.3.7).
    expect(lines.map((one) => one.source)).toEqual(['optical-flat', 'wavelength'])
    expect(lines[0]?.contribution).toBeCloseTo(0.0173205, 7)
    expect(lines[1]?.contribution).toBeCloseTo(0.00034641, 8)
  })

  it('grows with the band, and of the lamp with the flatness', () => {
    const lamp = { ...input, wavelengthHalfWidthNm: 1 }
    const of = (changes: object) => photoFlatnessBudget({ ...lamp, ...changes })
    const [first] = of({})
    expect(of({ bandHeightUm: 0.6 })[0]?.contribution).toBe(2 * (first?.contribution ?? 0))
    const last = of({}).at(-1)
    expect(of({ flatnessUm: 1.2 }).at(-1)?.contribution).toBe(2 * (last?.contribution ?? 0))
  })

  it('refuses what is out of range', () => {
    expect(() => photoFlatnessBudget({ ...input, bandHeightUm: 0 })).toThrow(RangeError)
    expect(() => photoFlatnessBudget({ ...input, flatnessUm: -1 })).toThrow(RangeError)
    expect(() => photoFlatnessBudget({ ...input, wavelengthNm: 199 })).toThrow(RangeError)
    expect(() => photoFlatnessBudget({ ...input, opticalFlatToleranceUm: 101 })).toThrow(RangeError)
    expect(() => photoFlatnessBudget({ ...input, wavelengthHalfWidthNm: -1 })).toThrow(RangeError)
    expect(() => photoFlatnessBudget({ ...input, parts: { ...parts, floor: -1 } })).toThrow(
      RangeError,
    )
  })
})
