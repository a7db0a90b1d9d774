import { describe, expect, it } from 'vitest'
import { studentTQuantile } from '../../../src/science/statistics/student-t-quantile.ts'
import { evaluateLinear } from '../../../src/science/uncertainty/evaluate-linear.ts'
import {
  endGauge,
  fourAlike,
  massCalibration,
  oneTenTimes,
  published,
  quantity,
  relativeProduct,
} from './gum-models.ts'

describe('the linear evaluation', () => {
  it('gives the end gauge of JCGM 100 H.1', () => {
    const { printed, recomputed } = published.endGauge
    const got = evaluateLinear(endGauge, { probability: 0.99 })
    expect(got.value).toBe(printed.value)
    // Rounding of doubles: 50 000 623 has 8 of its 16 digits before the point.
    expect(got.standardUncertainty).toBeCloseTo(recomputed.standardUncertainty, 8)
    expect(got.effectiveDegreesOfFreedom).toBeCloseTo(recomputed.effectiveDegreesOfFreedom, 8)
    expect(got.coverageFactor).toBeCloseTo(recomputed.coverageFactor, 10)
    expect(got.budget).toHaveLength(recomputed.contributions.length)
    for (const [index, contribution] of recomputed.contributions.entries()) {
      expect(got.budget[index]?.contribution).toBeCloseTo(contribution, 8)
    }
    // As printed: 32 nm, 16 degrees of freedom, 2.92, and 93 nm, which is 2.92 times 32 cut off.
    expect(Math.round(got.standardUncertainty)).toBe(printed.standardUncertainty)
    expect(Math.floor(got.effectiveDegreesOfFreedom ?? 0)).toBe(printed.degreesOfFreedom)
    expect(got.coverageFactor).toBeCloseTo(printed.coverageFactor, 2)
    expect(Math.abs(got.expandedUncertainty - printed.expandedUncertainty)).toBeLessThan(1)
  })

  it('gives JCGM 100 G.4.1: degrees of freedom cut off, t and U', () => {
    const { printed, recomputed } = published.welchSatterthwaite
    const got = evaluateLinear(relativeProduct, { probability: 0.95 })
    expect(got.standardUncertainty).toBeCloseTo(recomputed.standardUncertainty, 12) // rounding
    expect(got.effectiveDegreesOfFreedom).toBeCloseTo(recomputed.effectiveDegreesOfFreedom, 10)
    // 18.9987 is cut off to 18, t 2.101; the print rounds to 19 and 2.09. U 2.2 either way.
    expect(got.coverageFactor).toBeCloseTo(recomputed.coverageFactor, 10)
    expect(got.standardUncertainty).toBeCloseTo(printed.standardUncertainty, 2)
    expect(got.expandedUncertainty).toBeCloseTo(printed.expandedUncertainty, 1)
  })

  it.each([
    ['9.2.3', fourAlike, published.fourAlike],
    ['9.2.4', oneTenTimes, published.oneTenTimes],
  ] as const)('gives the normal interval of JCGM 101 %s', (_, model, { printed, recomputed }) => {
    const got = evaluateLinear(model, { probability: 0.95 })
    expect(got.standardUncertainty).toBeCloseTo(recomputed.standardUncertainty, 12) // rounding
    // The recomputed 19.891462 has eight digits.
    expect(got.expandedUncertainty).toBeCloseTo(recomputed.expandedUncertainty, 6)
    expect(Math.abs(got.expandedUncertainty - printed.expandedUncertainty)).toBeLessThan(0.01)
  })

  it('gives the first-order mass of JCGM 101 9.3', () => {
    const { printed, recomputed } = published.mass
    const got = evaluateLinear(massCalibration, { probability: 0.95 })
    expect(got.value).toBeCloseTo(printed.mean, 9) // rounding of 100 000
    expect(got.standardUncertainty).toBeCloseTo(recomputed.standardUncertainty, 9)
    expect(got.standardUncertainty).toBeCloseTo(printed.standardUncertainty, 4)
  })

  it('keeps whole degrees of freedom whole', () => {
    // One source with n degrees of freedom has n, whatever the reciprocal of 1 / n rounds to.
    for (let n = 1; n <= 200; n++) {
      const model = { expression: 'a', quantities: [quantity('a', 0, 0.3, 'normal', n)] }
      const got = evaluateLinear(model, { probability: 0.95 }).coverageFactor
      expect(got, `${n}`).toBe(studentTQuantile({ probability: 0.975, degreesOfFreedom: n }))
    }
  })

  it('is proportional to its unit and blind to the order of quantities', () => {
    const turned = { ...endGauge, quantities: endGauge.quantities.toReversed() }
    const scaled = { ...endGauge, expression: `1000 * (${endGauge.expression})` }
    const [plain, other, larger] = [endGauge, turned, scaled].map((model) =>
      evaluateLinear(model, { probability: 0.95 }),
    )
    expect(other?.standardUncertainty).toBeCloseTo(plain?.standardUncertainty ?? 0, 10) // rounding
    expect((larger?.expandedUncertainty ?? 0) / (plain?.expandedUncertainty ?? 1)).toBeCloseTo(
      1000,
      8, // rounding
    )
  })

  it('of constants has no uncertainty and the factor of a known one', () => {
    const model = { expression: '2 * a', quantities: [quantity('a', 3, 0)] }
    expect(evaluateLinear(model, { probability: 0.95 })).toMatchObject({
      value: 6,
      standardUncertainty: 0,
      expandedUncertainty: 0,
      effectiveDegreesOfFreedom: null,
    })
  })

  it.each([
    ['1 / a', 'not-finite'],
    ['sqrt(a)', 'not-finite'],
    ['b', 'unknown-name'],
  ])('refuses %s at 0 as %s', (expression, kind) => {
    const model = { expression, quantities: [quantity('a', 0, 1)] }
    expect(() => evaluateLinear(model, { probability: 0.95 })).toThrow(kind)
  })

  it('refuses what a double can no longer hold, in u or in U', () => {
    const evaluate = (expression: string, u: number) =>
      evaluateLinear({ expression, quantities: [quantity('a', 0, u)] }, { probability: 0.95 })
    expect(() => evaluate('1e300 * a', 1e15)).toThrow('not-finite')
    // u is 1e308 still, 1.96 u is beyond 1.8e308.
    expect(() => evaluate('1e300 * a', 1e8)).toThrow('not-finite')
    expect(evaluate('1e300 * a', 1e7).standardUncertainty / 1e307).toBeCloseTo(1, 12) // rounding
  })

  it.each([0, 1, Number.NaN])('refuses the probability %s', (probability) => {
    expect(() => evaluateLinear(endGauge, { probability })).toThrow(RangeError)
  })
})
