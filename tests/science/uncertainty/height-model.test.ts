import { describe, expect, it } from 'vitest'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'
import { type HeightInput, heightBudget } from '../../../src/science/uncertainty/height-budget.ts'
import { heightModel } from '../../../src/science/uncertainty/height-model.ts'
import { linearByDifferences } from '../linear-by-differences.ts'
import { sampleModel } from '../sample-model.ts'

const worked: HeightInput = {
  readingsUm: [2501, 2503, 2502],
  resolutionUm: 1,
  largestErrorUm: 2,
  settingStandardUncertaintyUm: 0.5,
  temperature: { halfWidthK: 20, expansionPerK: 23e-6 },
  alignmentHalfWidthUm: 1,
}

describe('heightModel', () => {
  it.each([
    ['three readings', worked],
    ['a single one', { ...worked, readingsUm: [2502] }],
    ['the warmth alone', { readingsUm: [2502], temperature: worked.temperature }],
  ] as const)('gives mean and u of the budget for %s, by differences', (_, input) => {
    const { value, u } = linearByDifferences(heightModel(input))
    expect(value).toBe(2502)
    const expected = expandedResult(heightBudget(input)).standardUncertainty
    // Central differences at 2502 um lose some digits of 1e-3 um.
    expect(Math.abs(u / expected - 1)).toBeLessThan(1e-7)
  })

  it('scatters as the budget says, by 100 000 trials of a single reading', () => {
    const single = { ...worked, readingsUm: [2502] }
    const { mean, deviation } = sampleModel(heightModel(single), { seed: 4, trials: 100_000 })
    const u = expandedResult(heightBudget(single)).standardUncertainty
    expect(Math.abs(deviation / u - 1)).toBeLessThan(0.009) // four standard errors of 0.22 %
    expect(Math.abs(mean - 2502)).toBeLessThan(0.013 * u) // four of u / sqrt n
  })

  it('is the bare mean where nothing else is known', () => {
    expect(heightModel({ readingsUm: [2502] }).expression).toBe('meanUm')
  })

  it('refuses what the budget refuses', () => {
    expect(() => heightModel({ readingsUm: [] })).toThrow(RangeError)
  })
})
