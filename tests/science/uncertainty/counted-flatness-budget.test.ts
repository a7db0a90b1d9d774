import { describe, expect, it } from 'vitest'
import { bandHeightUm } from '../../../src/science/optics/band-height-um.ts'
import {
  type CountedFlatnessBudgetInput,
  countedFlatnessBudget,
} from '../../../src/science/uncertainty/counted-flatness-budget.ts'
import { readReference } from '../read-reference.ts'

interface Worked {
  wavelengthNm: number
  bands: number
  readingHalfWidthBands: number
  repeatability: { standardDeviationBands: number; count: number }
  opticalFlatToleranceUm: number
  viewingAngleLimitDeg: number
  thermalStandardUncertaintyUm: number
  contributionsNm: Record<string, number>
  standardNm: number
  expandedNm: number
  expandedBands: number
}
const worked = readReference<Worked>('uncertainty/flatness-budget.json')
const height = bandHeightUm(worked)
const plain = { bandHeightUm: height, flatnessUm: 2 * height, isSumOfTwoDirections: false }
const full: CountedFlatnessBudgetInput = {
  ...plain,
  readingHalfWidthBands: worked.readingHalfWidthBands,
  repeatability: worked.repeatability,
  opticalFlatToleranceUm: worked.opticalFlatToleranceUm,
  viewingAngleLimitDeg: worked.viewingAngleLimitDeg,
  // A 60 mm ring, 10 mm thick, 4e-6/K: 0.18 um/K; the difference that leaves 10 nm standard.
  thermal: {
    deltaK: (worked.thermalStandardUncertaintyUm * Math.sqrt(3)) / 0.18,
    expansionPerK: 4e-6,
    diameterMm: 60,
    thicknessMm: 10,
  },
}

describe('countedFlatnessBudget', () => {
  it('gives the worked budget of two helium bands, line by line and in total', () => {
    const result = countedFlatnessBudget(full)
    expect(result.budget.map((line) => line.source)).toEqual(Object.keys(worked.contributionsNm))
    for (const line of result.budget) {
      // Printed to 0.1 nm.
      expect(
        Math.abs(line.contribution * 1000 - (worked.contributionsNm[line.source] ?? 0)),
      ).toBeLessThan(0.051)
    }
    // 0.1 nm
    expect(Math.abs(result.standardUncertaintyUm * 1000 - worked.standardNm)).toBeLessThan(0.051)
    // 0.1 nm
    expect(Math.abs(result.expandedUncertaintyUm * 1000 - worked.expandedNm)).toBeLessThan(0.051)
    // printed digits
    expect(result.expandedUncertaintyUm / height).toBeCloseTo(worked.expandedBands, 3)
    expect([result.coverageFactor, result.effectiveDegreesOfFreedom]).toEqual([2, null])
  })

  it('makes every contribution the value times the sensitivity', () => {
    const { budget } = countedFlatnessBudget(full)
    expect(budget.length).toBe(5)
    for (const line of budget)
      expect(line.contribution).toBe(line.value * Math.abs(line.sensitivity))
  })

  it('agrees with sampling the readings', () => {
    // Second route: exact moments of a rectangular reading by summing a fine grid.
    let squares = 0
    const steps = 20_000
    for (let i = 0; i < steps; i++) squares += ((((i + 0.5) / steps) * 2 - 1) * 0.25 * height) ** 2
    // Midpoint rule: relative error 1 / steps^2.
    expect(countedFlatnessBudget(plain).standardUncertaintyUm).toBeCloseTo(
      Math.sqrt(squares / steps),
      9,
    )
  })

  it('takes a quarter of a band when nothing is said of the reading', () => {
    expect(countedFlatnessBudget(plain)).toEqual(
      countedFlatnessBudget({ ...plain, readingHalfWidthBands: 0.25 }),
    )
  })

  it('combines the two readings of a saddle in quadrature', () => {
    const one = countedFlatnessBudget(plain).standardUncertaintyUm
    const two = countedFlatnessBudget({
      ...plain,
      isSumOfTwoDirections: true,
    }).standardUncertaintyUm
    expect(two / one).toBeCloseTo(Math.SQRT2, 14) // rounding only
  })

  it('keeps an uncertainty for straight bands', () => {
    expect(countedFlatnessBudget({ ...full, flatnessUm: 0 }).standardUncertaintyUm).toBeGreaterThan(
      0.02,
    )
  })

  it('takes a scatter without degrees of freedom as one of the method, known beforehand', () => {
    const line = countedFlatnessBudget(full).budget.find((one) => one.source === 'repeatability')
    expect(line).toMatchObject({ distribution: 'normal', degreesOfFreedom: null })
  })

  it('takes Student’s t where the scatter was found from few counts', () => {
    const repeatability = { ...worked.repeatability, degreesOfFreedom: 2 }
    const known = countedFlatnessBudget(full)
    const found = countedFlatnessBudget({ ...full, repeatability })
    expect(found.standardUncertaintyUm).toBe(known.standardUncertaintyUm)
    const line = found.budget.find((one) => one.source === 'repeatability')
    expect(line).toMatchObject({ distribution: 't', degreesOfFreedom: 2 })
    // By hand: (35.64 / 25.44)^4 x 2 = 7.70; t of 0.975 by the table of JCGM 100:2008, G.2, is
    // 2.36 for 7 and 2.31 for 8.
    expect(found.effectiveDegreesOfFreedom).toBeCloseTo(7.7, 1) // digits of the hand calculation
    expect(found.coverageFactor).toBeGreaterThan(2.31)
    expect(found.coverageFactor).toBeLessThan(2.36)
    expect(found.expandedUncertaintyUm).toBe(found.coverageFactor * found.standardUncertaintyUm)
  })

  it('takes a single count where the scatter is from elsewhere', () => {
    const repeatability = { standardDeviationBands: 0.15, count: 1, degreesOfFreedom: 9 }
    const { budget } = countedFlatnessBudget({ ...plain, repeatability })
    expect(budget.find((line) => line.source === 'repeatability')).toMatchObject({
      value: 0.15,
      degreesOfFreedom: 9,
    })
  })

  it('gives the lamp’s wavelength a line where its half width is stated, else none', () => {
    // Two bands of a nominal 525 nm LED, 5 nm either way: 0.525 um x 5 / 525 / sqrt 3 = 2.9 nm.
    const led = {
      bandHeightUm: 0.2625,
      flatnessUm: 0.525,
      isSumOfTwoDirections: false,
      wavelengthNm: 525,
    }
    const { budget } = countedFlatnessBudget({ ...led, wavelengthHalfWidthNm: 5 })
    const line = budget.find((one) => one.source === 'wavelength')
    expect(line?.contribution).toBeCloseTo(0.00289, 5) // digits by hand
    expect(line?.distribution).toBe('rectangular')
    // Second route: the figure of the longest and the shortest wavelength.
    const countedUm = (nm: number) => (2 * nm) / 2000
    const halfWidthUm = (countedUm(530) - countedUm(520)) / 2
    expect(line?.contribution).toBeCloseTo(halfWidthUm / Math.sqrt(3), 12) // linear; rounding
    expect(countedFlatnessBudget(led).budget.map((one) => one.source)).toEqual(['reading'])
  })

  it('gives the optical flat a bow of its own beside that of the ring', () => {
    // Borosilicate 100 x 20 mm bows by 0.206 um a kelvin: 0.0595 um for half a kelvin either way.
    const flatThermal = { deltaK: 0.5, expansionPerK: 3.3e-6, diameterMm: 100, thicknessMm: 20 }
    const { budget } = countedFlatnessBudget({ ...full, flatThermal })
    const line = budget.find((one) => one.source === 'thermal-bow-of-flat')
    expect(line?.contribution).toBeCloseTo(0.0595, 4) // digits by hand
    expect(budget.length).toBe(6)
  })

  it('scales: lines of the count with the band, those of the figure with the bands counted', () => {
    const lamp = { wavelengthNm: 587.5618, wavelengthHalfWidthNm: 0.05 }
    const of = (source: string, more: Partial<CountedFlatnessBudgetInput>) =>
      countedFlatnessBudget({ ...full, ...lamp, ...more }).budget.find(
        (line) => line.source === source,
      )?.contribution ?? Number.NaN
    const twice = { flatnessUm: 2 * full.flatnessUm }
    for (const source of ['wavelength', 'viewing-angle']) {
      expect(of(source, twice) / of(source, {})).toBeCloseTo(2, 12) // rounding
    }
    const higher = { bandHeightUm: 2 * full.bandHeightUm }
    for (const source of ['reading', 'repeatability']) {
      expect(of(source, higher) / of(source, {})).toBeCloseTo(2, 12) // rounding
      expect(of(source, twice)).toBe(of(source, {}))
    }
    const coarser = { readingHalfWidthBands: 2 * worked.readingHalfWidthBands }
    expect(of('reading', coarser) / of('reading', {})).toBeCloseTo(2, 12) // rounding
  })

  it('does not care which side of the part is warmer', () => {
    const thermal = { deltaK: 0.5, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 }
    const warm = countedFlatnessBudget({ ...plain, thermal })
    const cold = countedFlatnessBudget({ ...plain, thermal: { ...thermal, deltaK: -0.5 } })
    expect(cold.standardUncertaintyUm).toBe(warm.standardUncertaintyUm)
  })

  it('leaves out what is not known', () => {
    expect(countedFlatnessBudget(plain).budget.map((line) => line.source)).toEqual(['reading'])
  })

  it.each([
    { bandHeightUm: 0 },
    { flatnessUm: -1 },
    { readingHalfWidthBands: -0.1 },
    { readingHalfWidthBands: Number.NaN },
    { repeatability: { standardDeviationBands: 0.1, count: 1 } },
    { repeatability: { standardDeviationBands: -0.1, count: 3 } },
    { repeatability: { standardDeviationBands: 0.1, count: 3, degreesOfFreedom: 0.5 } },
    { repeatability: { standardDeviationBands: 0.1, count: 0, degreesOfFreedom: 3 } },
    { wavelengthHalfWidthNm: 5 },
    { wavelengthHalfWidthNm: -1, wavelengthNm: 600 },
    { opticalFlatToleranceUm: -1 },
    { opticalFlatStandardUncertaintyUm: -1 },
    { viewingAngleLimitDeg: 81 },
  ])('refuses %o', (wrong) => {
    expect(() => countedFlatnessBudget({ ...plain, ...wrong })).toThrow(
      /^countedFlatnessBudget requires /,
    )
  })
})
