import { describe, expect, it } from 'vitest'
import { bandHeightUm } from '../../../src/science/optics/band-height-um.ts'
import { countedFlatnessBudget } from '../../../src/science/uncertainty/counted-flatness-budget.ts'
import {
  type CountedFlatnessModelInput,
  countedFlatnessModel,
} from '../../../src/science/uncertainty/counted-flatness-model.ts'
import { linearByDifferences } from '../linear-by-differences.ts'
import { sampleModel } from '../sample-model.ts'

const lamp = { wavelengthNm: 587.5618, viewingAngleDeg: 10 }
const height = bandHeightUm(lamp)
/** Two bands, and all that can be known of them. */
const full: CountedFlatnessModelInput = {
  ...lamp,
  bandHeightUm: height,
  flatnessUm: 2 * height,
  isSumOfTwoDirections: false,
  readingHalfWidthBands: 0.1,
  repeatability: { standardDeviationBands: 0.15, count: 3 },
  opticalFlatToleranceUm: 0.025,
  opticalFlatStandardUncertaintyUm: 0.0075,
  wavelengthHalfWidthNm: 5,
  viewingAngleLimitDeg: 10,
  thermal: { deltaK: 0.1, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 },
  flatThermal: { deltaK: -0.2, expansionPerK: 0.55e-6, diameterMm: 100, thicknessMm: 20 },
}
const bare: CountedFlatnessModelInput = {
  wavelengthNm: 589.2938,
  bandHeightUm: bandHeightUm({ wavelengthNm: 589.2938 }),
  flatnessUm: 0.9,
  isSumOfTwoDirections: false,
}
const cases = [
  ['all of two bands', full],
  ['a saddle', { ...full, isSumOfTwoDirections: true }],
  ['straight bands', { ...full, flatnessUm: 0 }],
  ['the count alone', bare],
  [
    'a scatter from few counts',
    { ...full, repeatability: { ...full.repeatability!, degreesOfFreedom: 2 } },
  ],
] as const

describe('countedFlatnessModel', () => {
  it.each(cases)('gives figure and u of the budget for %s, by differences', (_, input) => {
    const { value, u } = linearByDifferences(countedFlatnessModel(input))
    expect(value).toBeCloseTo(input.flatnessUm, 12) // rounding
    const expected = countedFlatnessBudget(input).standardUncertaintyUm
    // Central differences of nearly straight functions, steps of u / 1000.
    expect(Math.abs(u / expected - 1)).toBeLessThan(1e-7)
  })

  it.each([
    ['two bands', full],
    ['a saddle', { ...full, isSumOfTwoDirections: true }],
  ] as const)('scatters as the budget says, by 100 000 trials of %s', (_, input) => {
    const { mean, deviation } = sampleModel(countedFlatnessModel(input), {
      seed: 41,
      trials: 100_000,
    })
    const u = countedFlatnessBudget(input).standardUncertaintyUm
    // A deviation from 100 000 trials has a standard error of 0.22 %: four of those.
    expect(Math.abs(deviation / u - 1)).toBeLessThan(0.009)
    // A mean has u / sqrt(100 000): four of those.
    expect(Math.abs(mean - input.flatnessUm)).toBeLessThan(0.013 * u)
  })

  it('has a reading for each direction of a saddle, and a t for a scatter from few counts', () => {
    const saddle = countedFlatnessModel({
      ...full,
      isSumOfTwoDirections: true,
      repeatability: { standardDeviationBands: 0.1, count: 4, degreesOfFreedom: 3 },
    })
    const byName = new Map(saddle.quantities.map((one) => [one.name, one]))
    expect(byName.get('firstReading')).toMatchObject({ distribution: 'rectangular' })
    expect(byName.get('secondReading')?.standardUncertainty).toBeCloseTo(0.1 / Math.sqrt(3), 12)
    expect(byName.get('repeatability')).toMatchObject({
      distribution: 't',
      standardUncertainty: 0.05,
      degreesOfFreedom: 3,
    })
  })

  it('takes a wider excess of the viewing angle than one drawn from the angle itself', () => {
    // An angle from 0 to L: the excess has the mean L^2 / 6 and the deviation L^2 / (2 sqrt 11.25).
    const limit = (10 * Math.PI) / 180
    const drawn = limit ** 2 / (2 * Math.sqrt(11.25))
    const line = countedFlatnessModel(full).quantities.find((one) => one.name === 'viewingExcess')
    expect(line?.standardUncertainty).toBeGreaterThan(1.9 * drawn)
    expect(line?.standardUncertainty).toBeLessThan(2 * drawn)
  })

  it('names every quantity once, a letter and then letters and digits', () => {
    for (const [, input] of cases) {
      const { expression, quantities } = countedFlatnessModel(input)
      const names = quantities.map((one) => one.name)
      expect(new Set(names).size).toBe(names.length)
      for (const name of names) {
        expect(name).toMatch(/^[A-Za-z][A-Za-z0-9]*$/)
        expect(expression).toContain(name)
      }
    }
  })

  it('refuses a height that is not that of its lamp and angle', () => {
    expect(() => countedFlatnessModel({ ...full, viewingAngleDeg: 0 })).toThrow(
      /^countedFlatnessModel requires bandHeightUm /,
    )
    expect(() => countedFlatnessModel({ ...full, wavelengthNm: 100 })).toThrow(RangeError)
  })
})
