import { describe, expect, it } from 'vitest'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'
import { type HeightInput, heightBudget } from '../../../src/science/uncertainty/height-budget.ts'

/** A carbon nose, read three times with a micrometer to 1 um, set on a gauge block. */
const worked: HeightInput = {
  readingsUm: [2501, 2503, 2502],
  resolutionUm: 1,
  largestErrorUm: 2,
  settingStandardUncertaintyUm: 0.5,
  temperature: { halfWidthK: 5, expansionPerK: 5e-6 },
  alignmentHalfWidthUm: 1,
}

describe('heightBudget', () => {
  it('gives a worked nose height line by line (own derivation)', () => {
    // s = 1: 1 / sqrt 3; 1 / sqrt 12; 2 / sqrt 3; 0.5; 5e-6 x 2502 x 5 / sqrt 3 = 0.036113;
    // 1 / sqrt 3.
    const byHand = {
      repeatability: 0.57735,
      resolution: 0.288675,
      instrument: 1.154701,
      setting: 0.5,
      temperature: 0.036113,
      alignment: 0.57735,
    }
    const lines = heightBudget(worked)
    expect(lines.map((line) => line.source)).toEqual(Object.keys(byHand))
    for (const line of lines) {
      // Digits of the hand calculation.
      expect(line.contribution).toBeCloseTo(byHand[line.source as keyof typeof byHand], 5)
    }
    // sqrt(0.33333 + 0.08333 + 1.33333 + 0.25 + 0.0013 + 0.33333) = 1.5280.
    expect(expandedResult(lines).standardUncertainty).toBeCloseTo(1.528, 3)
  })

  it('expands as the end gauge of JCGM 100:2008, H.1: 50 mm, 11.5e-6 per K', () => {
    // There the difference in temperature of +-0.05 K has u = 0.029 C and gives 16.6 nm.
    const [line] = heightBudget({
      readingsUm: [50_000],
      temperature: { halfWidthK: 0.05, expansionPerK: 11.5e-6 },
    })
    expect(line?.value).toBeCloseTo(0.029, 3) // printed digits
    expect((line?.contribution ?? 0) * 1000).toBeCloseTo(16.6, 1) // printed digits
  })

  it('grows with the height where it is warm, and not elsewhere', () => {
    const of = (source: string, um: number) =>
      heightBudget({ ...worked, readingsUm: [um] }).find((line) => line.source === source)
        ?.contribution ?? Number.NaN
    expect(of('temperature', 5000) / of('temperature', 2500)).toBeCloseTo(2, 12) // rounding
    expect(of('instrument', 5000)).toBe(of('instrument', 2500))
  })

  it('has no line for what is not known', () => {
    expect(heightBudget({ readingsUm: [2500] })).toEqual([])
  })

  it.each([
    { settingStandardUncertaintyUm: -1 },
    { temperature: { halfWidthK: 101, expansionPerK: 5e-6 } },
    { temperature: { halfWidthK: 1, expansionPerK: 0.1 } },
    { alignmentHalfWidthUm: -1 },
    { readingsUm: [] },
    { largestErrorRelative: 0.1 },
    { standardUncertaintyUm: -1 },
  ])('refuses %o', (wrong) => {
    expect(() => heightBudget({ ...worked, ...wrong })).toThrow(RangeError)
  })
})
