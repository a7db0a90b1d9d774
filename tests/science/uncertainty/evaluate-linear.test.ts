import { describe, expect, it } from 'vitest'
import { studentTQuantile } from '../../../src/science/statistics/student-t-quantile.ts'
import { evaluateLinear } from '../../../src/science/uncertainty/evaluate-linear.ts'
import { endGauge, massCalibration, quantity, sumOfFour } from './gum-models.ts'

describe('the linear evaluation', () => {
  it('gives the end gauge of JCGM 100 H.1', () => {
    const got = evaluateLinear(endGauge, { probability: 0.99 })
    // Printed (from memory): 50 000 838 nm, u 32 nm, 16 degrees of freedom, t 2.92, U99 93 nm.
    expect(got.value).toBe(50_000_838)
    expect(got.standardUncertainty).toBeCloseTo(31.664, 2) // recomputed: 31.6639
    expect(got.effectiveDegreesOfFreedom).toBeCloseTo(16.75, 1)
    expect(got.coverageFactor).toBeCloseTo(2.92, 2)
    expect(Math.round(got.standardUncertainty)).toBe(32)
    expect(Math.abs(got.expandedUncertainty - 93)).toBeLessThan(0.6) // 92.5: u is printed as 32
    const contributions = got.budget.map((line) => line.contribution)
    // Recomputed from the printed inputs: 25, 9.6819, 2.88679, 0, 0, 16.59903.
    expect(contributions.map((one) => Number(one.toPrecision(5)))).toEqual([
      25, 9.6819, 2.8868, 0, 0, 16.599,
    ])
  })

  it('gives JCGM 100 G.4.1: degrees of freedom cut off, t and U', () => {
    // Relative uncertainties 0.25, 0.57, 0.82 % with 9, 4, 14 degrees of freedom.
    const model = {
      expression: 'b * c * d',
      quantities: [
        quantity('b', 1, 0.25, 'normal', 9),
        quantity('c', 1, 0.57, 'normal', 4),
        quantity('d', 1, 0.82, 'normal', 14),
      ],
    }
    const got = evaluateLinear(model, { probability: 0.95 })
    expect(got.standardUncertainty).toBeCloseTo(1.03, 2)
    expect(got.effectiveDegreesOfFreedom).toBeCloseTo(19.0, 1)
    // 18.9987 is cut off to 18, t 2.101; the print rounds to 19 and 2.09. U 2.2 either way.
    expect(got.coverageFactor).toBeCloseTo(2.10092, 4)
    expect(got.expandedUncertainty).toBeCloseTo(2.2, 1)
  })

  it('gives the normal interval of JCGM 101 9.2.3 and 9.2.4', () => {
    const nine = evaluateLinear(sumOfFour(1), { probability: 0.95 })
    expect(nine.expandedUncertainty).toBeCloseTo(3.92, 2)
    const ten = evaluateLinear(sumOfFour(10), { probability: 0.95 })
    expect(ten.standardUncertainty).toBeCloseTo(10.15, 2)
    expect(ten.expandedUncertainty).toBeCloseTo(19.9, 1)
  })

  it('gives the first-order mass of JCGM 101 9.3', () => {
    const got = evaluateLinear(massCalibration, { probability: 0.95 })
    expect(got.value).toBeCloseTo(1.234, 9) // rounding of 100 000
    expect(got.standardUncertainty).toBeCloseTo(0.0539, 4)
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

  it.each([0, 1, Number.NaN])('refuses the probability %s', (probability) => {
    expect(() => evaluateLinear(endGauge, { probability })).toThrow(RangeError)
  })
})
