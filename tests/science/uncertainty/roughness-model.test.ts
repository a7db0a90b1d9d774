import { describe, expect, it } from 'vitest'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'
import {
  type RoughnessInput,
  roughnessBudget,
} from '../../../src/science/uncertainty/roughness-budget.ts'
import { roughnessModel } from '../../../src/science/uncertainty/roughness-model.ts'
import { linearByDifferences } from '../linear-by-differences.ts'
import { sampleModel } from '../sample-model.ts'

const worked: RoughnessInput = {
  readingsUm: [0.18, 0.22, 0.2, 0.24],
  resolutionUm: 0.01,
  largestErrorRelative: 0.05,
  referenceStandardUncertaintyUm: 0.008,
}

describe('roughnessModel', () => {
  it.each([
    ['four places', worked],
    ['a single place', { ...worked, readingsUm: [0.21] }],
    ['a calibrated instrument', { readingsUm: [0.21], standardUncertaintyUm: 0.01 }],
  ] as const)('gives mean and u of the budget for %s, by differences', (_, input) => {
    const { value, u } = linearByDifferences(roughnessModel(input))
    expect(value).toBeCloseTo(0.21, 12) // rounding
    const expected = expandedResult(roughnessBudget(input)).standardUncertainty
    expect(Math.abs(u / expected - 1)).toBeLessThan(1e-9) // differences of a straight function
  })

  it('scatters as the budget says, by 100 000 trials of a single place', () => {
    const single = { ...worked, readingsUm: [0.21] }
    const { mean, deviation } = sampleModel(roughnessModel(single), { seed: 6, trials: 100_000 })
    const u = expandedResult(roughnessBudget(single)).standardUncertainty
    expect(Math.abs(deviation / u - 1)).toBeLessThan(0.009) // four standard errors of 0.22 %
    expect(Math.abs(mean - 0.21)).toBeLessThan(0.013 * u) // four of u / sqrt n
  })

  it('refuses what the budget refuses', () => {
    expect(() => roughnessModel({ readingsUm: [-1] })).toThrow(RangeError)
  })
})
