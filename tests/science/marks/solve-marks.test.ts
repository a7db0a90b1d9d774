import { describe, expect, it } from 'vitest'
import { solveMarks } from '../../../src/science/marks/solve-marks.ts'
import { seededNormal } from '../seeded-random.ts'

describe('solveMarks', () => {
  it('draws a mean towards 0 as the textbook does: n y / (n + sd^2 / prior sd^2)', () => {
    const orders = [1.2, 0.8, 1.4, 0.6]
    const got = solveMarks([1, 1, 1, 1], orders, { sds: [0.5, 0.5, 0.5, 0.5], precisions: [4] })
    // Mean 1, precision of the data 4 / 0.25 = 16, of the prior 4: 16 / 20.
    expect(got.gap[0]).toBeCloseTo(0.8, 12) // rounding
    expect(got.lower[0]).toBeCloseTo(Math.sqrt(20), 12)
  })

  it('has the evidence of a normal distribution with both variances: one mark', () => {
    // y ~ N(0, sd^2 + prior sd^2); differences of evidence have no constant.
    const evidence = (y: number, sd: number, prior: number) =>
      solveMarks([1], [y], { sds: [sd], precisions: [1 / prior ** 2] }).evidence
    const exact = (y: number, sd: number, prior: number) => {
      const variance = sd * sd + prior * prior
      return -0.5 * (Math.log(variance) + (y * y) / variance)
    }
    const difference = evidence(1.3, 0.2, 0.7) - evidence(0.4, 0.5, 2)
    expect(difference).toBeCloseTo(exact(1.3, 0.2, 0.7) - exact(0.4, 0.5, 2), 12) // rounding
  })

  it('weighs a mark by its own standard deviation', () => {
    const got = solveMarks([1, 1], [0, 3], { sds: [1, 2], precisions: [0] })
    expect(got.gap[0]).toBeCloseTo(3 / 5, 12) // weights 1 and 1/4
  })

  it('finds coefficients again when there is no noise and hardly a prior', () => {
    const normal = seededNormal(4)
    const rows = Array.from({ length: 30 * 5 }, normal)
    const truth = [1, -2, 0.5, 3, -1]
    const orders = Array.from({ length: 30 }, (_, i) =>
      truth.reduce((sum, value, k) => sum + value * (rows[i * 5 + k] as number), 0),
    )
    const got = solveMarks(rows, orders, {
      sds: new Float64Array(30).fill(0.01),
      precisions: [0, 0, 0, 0, 1e-9],
    })
    expect([...got.gap]).toEqual(truth.map((v) => expect.closeTo(v, 9))) // the prior, 1e-9 x 1e-4
  })

  it('refuses lengths that disagree and marks that leave the fit open', () => {
    expect(() => solveMarks([1], [1, 2], { sds: [1, 1], precisions: [0] })).toThrow('rows length')
    expect(() => solveMarks([1, 1], [1, 2], { sds: [1], precisions: [0] })).toThrow('sds length')
    expect(() => solveMarks([1, 1], [1], { sds: [1], precisions: [0, 0] })).toThrow(RangeError)
  })
})
