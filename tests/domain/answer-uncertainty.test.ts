import { describe, expect, it } from 'vitest'
import { answerUncertainty } from '../../src/domain/answer-uncertainty.ts'
import { quantity } from '../science/uncertainty/gum-models.ts'

const answer = (expression: string, value: number, standardUncertainty: number) =>
  answerUncertainty({
    model: { expression, quantities: [quantity('x', value, standardUncertainty)] },
    probability: 0.95,
    monteCarlo: null,
  })

describe('the answer of the calculator of uncertainty', () => {
  it('takes a straight model as straight', () => {
    const got = answer('3 * x + 1', 5, 2)
    expect(got).toMatchObject({ isNonlinear: false, method: 'uncertainty/model 1' })
    expect(got.secondOrderStandardUncertainty).toBe(got.standardUncertainty)
  })

  // x^2 about x: u = 2 x u(x), next term 2 u(x)^4; so the share is sqrt(1 + (u(x)/x)^2 / 2) - 1.
  it.each([
    [0.3, false], // 2.2 %
    [0.5, true], // 6.1 %
  ])('says of x^2 about 1 with u %s that it is curved: %s', (u, isNonlinear) => {
    const got = answer('x^2', 1, u)
    expect(got.isNonlinear).toBe(isNonlinear)
    // Differences of the slopes of a square are exact but for rounding.
    expect(got.secondOrderStandardUncertainty).toBeCloseTo(2 * u * Math.sqrt(1 + (u * u) / 2), 9)
  })

  it.each([
    // A tenth of u below 0.1 is the pole itself: the next terms have no end.
    ['1 / x', 0.1],
    // A tenth of u below 0.05 there is no root.
    ['sqrt(x)', 0.05],
    // u^2 - u^4 and what follows leave nothing at u = 1.2: sin over a whole hump.
    ['sin(1.2 * x)', 0],
  ])('has no second order for %s at %s with u 1, and says that it is curved', (model, value) => {
    const got = answer(model, value, 1)
    expect(got.secondOrderStandardUncertainty).toBeNull()
    expect(got.isNonlinear).toBe(true)
  })
})
