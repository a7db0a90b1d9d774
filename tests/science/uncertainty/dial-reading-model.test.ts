import { describe, expect, it } from 'vitest'
import {
  type DialReadingInput,
  dialReadingBudget,
} from '../../../src/science/uncertainty/dial-reading-budget.ts'
import { dialReadingModel } from '../../../src/science/uncertainty/dial-reading-model.ts'
import { dialReadingUm } from '../../../src/science/uncertainty/dial-reading-um.ts'
import { expandedResult } from '../../../src/science/uncertainty/expanded-result.ts'
import { linearByDifferences } from '../linear-by-differences.ts'
import { sampleModel } from '../sample-model.ts'

const worked: DialReadingInput = {
  readingsUm: [40, 42, 41],
  resolutionUm: 2,
  largestErrorUm: 3,
  isDifference: true,
  leverAngleDeg: 15,
  leverAngleHalfWidthDeg: 5,
}

describe('dialReadingModel', () => {
  it.each([
    ['a run-out with a lever', worked],
    ['a single end play', { readingsUm: [50], isDifference: true, standardUncertaintyUm: 2 }],
    ['a height with a dial', { readingsUm: [50, 52], isDifference: false, resolutionUm: 1 }],
  ] as const)('gives figure and u of the budget for %s, by differences', (_, input) => {
    const { value, u } = linearByDifferences(dialReadingModel(input))
    expect(value).toBeCloseTo(dialReadingUm(input), 12) // rounding
    const expected = expandedResult(dialReadingBudget(input)).standardUncertainty
    expect(Math.abs(u / expected - 1)).toBeLessThan(1e-7) // differences of straight functions
  })

  it('scatters as the budget says, by 100 000 trials of a single run-out', () => {
    const single = { ...worked, readingsUm: [41] }
    const { mean, deviation } = sampleModel(dialReadingModel(single), { seed: 3, trials: 100_000 })
    const u = expandedResult(dialReadingBudget(single)).standardUncertainty
    expect(Math.abs(deviation / u - 1)).toBeLessThan(0.009) // four standard errors of 0.22 %
    expect(Math.abs(mean - dialReadingUm(single))).toBeLessThan(0.013 * u) // four of u / sqrt n
  })

  it('scatters by sqrt(v / (v - 2)) more where the mean of ten repeats is drawn from t', () => {
    const readingsUm = [40, 42, 41, 43, 39, 41, 40, 42, 44, 38]
    const model = dialReadingModel({ readingsUm, isDifference: true })
    const { deviation } = sampleModel(model, { seed: 8, trials: 50_000 })
    const [line] = dialReadingBudget({ readingsUm, isDifference: true })
    // JCGM 101:2008, 6.4.9.4: nine degrees of freedom, a factor of sqrt(9 / 7).
    const expected = (line?.contribution ?? 0) * Math.sqrt(9 / 7)
    // A t with nine degrees has kurtosis 4.2: standard error 0.4 % of 50 000, four of those.
    expect(Math.abs(deviation / expected - 1)).toBeLessThan(0.016)
  })

  it('refuses what the budget refuses', () => {
    expect(() => dialReadingModel({ ...worked, leverAngleDeg: 61 })).toThrow(RangeError)
  })
})
