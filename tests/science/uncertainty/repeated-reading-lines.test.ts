import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { repeatedReadingLines } from '../../../src/science/uncertainty/repeated-reading-lines.ts'

const single = { scatterSource: 'repeatability', isDifference: false, perUm: 1 } as const
const known = { readingsUm: [40, 42, 41, 41], resolutionUm: 1, largestErrorUm: 3 }

describe('repeatedReadingLines', () => {
  it('gives scatter, step and instrument as worked by hand', () => {
    const lines = repeatedReadingLines(known, single)
    // s = sqrt(2 / 3) of 40, 42, 41, 41, over the root of four; 1 / sqrt 12; 3 / sqrt 3.
    const byHand = { repeatability: 0.40825, resolution: 0.28868, instrument: 1.73205 }
    expect(lines.map((line) => line.source)).toEqual(Object.keys(byHand))
    for (const line of lines) {
      // Digits of the hand calculation.
      expect(line.contribution).toBeCloseTo(byHand[line.source as keyof typeof byHand], 5)
    }
    expect(lines.map((line) => line.degreesOfFreedom)).toEqual([3, null, null])
    expect(lines.map((line) => line.distribution)).toEqual(['t', 'rectangular', 'rectangular'])
  })

  it('gives the u of twenty temperatures, 0.33 C, JCGM 100:2008, 4.4.3', () => {
    const readingsUm = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
      100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
    ]
    const [line] = repeatedReadingLines({ readingsUm }, { ...single, scatterSource: 'surface' })
    expect(line).toMatchObject({ source: 'surface', degreesOfFreedom: 19 })
    expect(line?.contribution).toBeCloseTo(0.33, 2) // printed digits
  })

  it('lets both readings of a difference err, and the scatter count once', () => {
    const one = repeatedReadingLines(known, single)
    const two = repeatedReadingLines(known, { ...single, isDifference: true })
    const ratios = two.map((line, index) => line.contribution / (one[index]?.contribution ?? 0))
    expect(ratios[0]).toBe(1)
    for (const ratio of ratios.slice(1)) expect(ratio).toBeCloseTo(Math.SQRT2, 14) // rounding
  })

  it('scales all lines by what one um means', () => {
    const half = repeatedReadingLines(known, { ...single, perUm: -0.5 })
    expect(combinedStandardUncertainty(half)).toBeCloseTo(
      combinedStandardUncertainty(repeatedReadingLines(known, single)) / 2,
      14, // rounding
    )
  })

  it('takes the error of the instrument in each of its two ways', () => {
    const instrument = (more: object) =>
      repeatedReadingLines({ readingsUm: [40, 42], ...more }, single).find(
        (line) => line.source === 'instrument',
      )
    const relative = instrument({ largestErrorRelative: 0.1 })
    // A tenth of the mean, 41; rounding.
    expect(relative?.contribution).toBeCloseTo(4.1 / Math.sqrt(3), 12)
    expect(relative?.distribution).toBe('rectangular')
    expect(instrument({ largestErrorUm: 4.1 })?.contribution).toBeCloseTo(4.1 / Math.sqrt(3), 12)
    expect(instrument({})).toBeUndefined()
  })

  it('lets the error stand beside the uncertainty that it was found with', () => {
    const found = { readingsUm: [40], standardUncertaintyUm: 2, largestErrorUm: 3 }
    const lines = repeatedReadingLines(found, single)
    expect(lines.map(({ source, distribution }) => [source, distribution])).toEqual([
      ['calibration', 'normal'],
      ['instrument', 'rectangular'],
    ])
    // sqrt(2^2 + 3^2 / 3) = sqrt 7: an error that is not corrected makes u no smaller for being
    // well known, JCGM 100:2008, 6.3.1 note and F.2.4.5; rounding.
    expect(combinedStandardUncertainty(lines)).toBeCloseTo(Math.sqrt(7), 14)
    const [alone] = repeatedReadingLines({ readingsUm: [40], standardUncertaintyUm: 2 }, single)
    expect(alone).toMatchObject({ source: 'calibration', value: 2 })
    const difference = repeatedReadingLines(found, { ...single, isDifference: true })
    expect(combinedStandardUncertainty(difference)).toBeCloseTo(Math.sqrt(14), 14) // rounding
  })

  it('shows no scatter of a single reading, and has no line where nothing is known', () => {
    expect(repeatedReadingLines({ readingsUm: [40] }, single)).toEqual([])
  })

  it.each([
    { readingsUm: [] },
    { readingsUm: [Number.NaN] },
    { resolutionUm: -1 },
    { largestErrorUm: -1 },
    { largestErrorUm: undefined, largestErrorRelative: 1.1 },
    { largestErrorUm: undefined, standardUncertaintyUm: -1 },
    { standardUncertaintyUm: Number.NaN },
    { largestErrorRelative: 0.1 },
  ])('refuses %o', (wrong) => {
    expect(() => repeatedReadingLines({ ...known, ...wrong }, single)).toThrow(RangeError)
  })
})
