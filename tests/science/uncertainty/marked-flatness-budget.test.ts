import { describe, expect, it } from 'vitest'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { countedFlatnessBudget } from '../../../src/science/uncertainty/counted-flatness-budget.ts'
import { markedFlatnessBudget } from '../../../src/science/uncertainty/marked-flatness-budget.ts'

const helium = { bandHeightUm: 0.2938, flatnessUm: 0.6, wavelengthNm: 587.5618 }

describe('markedFlatnessBudget', () => {
  it('has half of U of the marks as its first line, in bands', () => {
    const [line] = markedFlatnessBudget({ ...helium, expandedBands: 0.35 })
    expect(line).toEqual({
      source: 'marks',
      value: 0.175,
      distribution: 'normal',
      sensitivity: 0.2938,
      contribution: expect.closeTo(0.175 * 0.2938, 12), // rounding
      degreesOfFreedom: null,
    })
  })

  it('adds up by hand: marks 0.175 band, flat 0.05 um, lamp 0.05 nm, view to 5 degrees', () => {
    const lines = markedFlatnessBudget({
      ...helium,
      expandedBands: 0.35,
      opticalFlatToleranceUm: 0.05,
      wavelengthHalfWidthNm: 0.05,
      viewingAngleLimitDeg: 5,
    })
    const excess = (1 / Math.cos((5 * Math.PI) / 180) - 1) * 0.6
    const byHand = Math.hypot(
      0.175 * 0.2938,
      0.05 / Math.sqrt(3),
      (0.05 * 0.6) / 587.5618 / Math.sqrt(3),
      excess / Math.sqrt(3),
    )
    expect(combinedStandardUncertainty(lines)).toBeCloseTo(byHand, 12) // rounding
  })

  it('has the lines of a counted flatness beside its own, but for the reading', () => {
    const known = {
      ...helium,
      opticalFlatToleranceUm: 0.1,
      wavelengthHalfWidthNm: 0.3,
      viewingAngleLimitDeg: 8,
      thermal: { deltaK: 0.5, expansionPerK: 4e-6, diameterMm: 60, thicknessMm: 10 },
      flatThermal: { deltaK: 0.2, expansionPerK: 0.55e-6, diameterMm: 100, thicknessMm: 20 },
    }
    const counted = countedFlatnessBudget({ ...known, isSumOfTwoDirections: false }).budget
    const marked = markedFlatnessBudget({ ...known, expandedBands: 1 })
    expect(marked.slice(1)).toEqual(counted.filter((line) => line.source !== 'reading'))
    expect(marked).toHaveLength(6)
  })

  it('refuses what is out of range', () => {
    expect(() => markedFlatnessBudget({ ...helium, expandedBands: -1 })).toThrow('expandedBands')
    expect(() => markedFlatnessBudget({ ...helium, expandedBands: 1, bandHeightUm: 0 })).toThrow(
      'bandHeightUm',
    )
  })
})
