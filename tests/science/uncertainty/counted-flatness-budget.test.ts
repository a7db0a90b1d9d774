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
    expect(result.coverageFactor).toBe(2)
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

  it('gives the repeatability its degrees of freedom and the limits none', () => {
    const byName = new Map(
      countedFlatnessBudget(full).budget.map((line) => [line.source, line.degreesOfFreedom]),
    )
    expect(byName.get('repeatability')).toBe(2)
    expect(byName.get('reading')).toBeNull()
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
    { opticalFlatToleranceUm: -1 },
    { viewingAngleLimitDeg: 81 },
    { thermal: { deltaK: 1, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 0 } },
  ])('refuses %o', (wrong) => {
    expect(() => countedFlatnessBudget({ ...plain, ...wrong })).toThrow(
      /^countedFlatnessBudget requires /,
    )
  })
})
