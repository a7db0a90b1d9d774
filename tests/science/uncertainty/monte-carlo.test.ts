import { describe, expect, it } from 'vitest'
import { evaluateLinear } from '../../../src/science/uncertainty/evaluate-linear.ts'
import { monteCarlo } from '../../../src/science/uncertainty/monte-carlo.ts'
import { seededUniform } from '../seeded-random.ts'
import { comparisonLoss, massCalibration, quantity, sumOfFour } from './gum-models.ts'

const options = { trials: 1_000_000, seed: 4, probability: 0.95 }

describe('propagation of distributions', () => {
  it('gives the intervals of JCGM 101 9.2.3 and 9.2.4', () => {
    const four = monteCarlo(sumOfFour(1), options)
    // Closed form 2 sqrt 3 (2 - (3/5)^(1/4)) = 3.8794; 10^6 trials: its end scatters by 0.004.
    expect(Math.abs(four.symmetricInterval[1] - 3.8794)).toBeLessThan(0.02)
    expect(Math.abs(four.standardDeviation - 2)).toBeLessThan(0.01)
    const ten = monteCarlo(sumOfFour(10), options)
    // Exact 17.0158; published 17.0 against 19.9 of the linear way.
    expect(Math.abs(ten.symmetricInterval[0] + 17.0158)).toBeLessThan(0.03)
    expect(Math.abs(ten.symmetricInterval[1] - 17.0158)).toBeLessThan(0.03)
  })

  it('gives the mass of JCGM 101 9.3', () => {
    const got = monteCarlo(massCalibration, options)
    // Published (from memory): 1.2340, 0.0754, [1.0834, 1.3825]; 2e7 trials: 0.07548.
    expect(Math.abs(got.mean - 1.234)).toBeLessThan(0.0004) // five of u / sqrt M
    expect(Math.abs(got.standardDeviation - 0.07548)).toBeLessThan(0.0004)
    expect(Math.abs(got.symmetricInterval[0] - 1.0844)).toBeLessThan(0.002)
    expect(Math.abs(got.symmetricInterval[1] - 1.3836)).toBeLessThan(0.002)
  })

  it('gives the comparison loss of JCGM 101 9.4, where the linear way gives nothing', () => {
    const got = monteCarlo(comparisonLoss(0), options)
    // Exact: chi-squared of two; mean and u 50e-6, 95 % from 0 to 149.8e-6.
    expect(Math.abs(got.mean - 50e-6)).toBeLessThan(0.3e-6)
    expect(Math.abs(got.standardDeviation - 50e-6)).toBeLessThan(0.5e-6)
    expect(got.shortestInterval[0]).toBeLessThan(0.2e-6)
    expect(Math.abs(got.shortestInterval[1] - 149.8e-6)).toBeLessThan(1e-6)
    const further = monteCarlo(comparisonLoss(0.01), options)
    expect(Math.abs(further.mean - 150e-6)).toBeLessThan(0.6e-6)
    expect(Math.abs(further.standardDeviation - 111.8e-6)).toBeLessThan(1e-6)
  })

  it('agrees with the linear way on linear models of normal quantities', () => {
    const random = seededUniform(3)
    for (let seed = 0; seed < 12; seed++) {
      const quantities = ['a', 'b', 'c'].map((name) =>
        quantity(name, 20 * random() - 10, random() + 0.01),
      )
      const [f, g] = [4 * random() - 2, 4 * random() - 2]
      const model = { expression: `${f.toFixed(6)} * a + b - (${g.toFixed(6)}) * c`, quantities }
      const linear = evaluateLinear(model, { probability: 0.95 })
      const trials = 50_000
      const got = monteCarlo(model, { trials, seed, probability: 0.95 })
      const u = linear.standardUncertainty
      // Five standard deviations each: u / sqrt M of a mean, u / sqrt(2 M) of a deviation, and of
      // the 2.5 % quantile sqrt(p q / M) / density = 2.67 u / sqrt M.
      expect(Math.abs(got.mean - linear.value)).toBeLessThan((5 * u) / Math.sqrt(trials))
      expect(Math.abs(got.standardDeviation - u)).toBeLessThan((5 * u) / Math.sqrt(2 * trials))
      const high = linear.value + linear.expandedUncertainty
      expect(Math.abs(got.symmetricInterval[1] - high)).toBeLessThan((13.4 * u) / Math.sqrt(trials))
    }
  })

  it('is the same for the same seed and counts every trial once', () => {
    const few = { trials: 5000, seed: 9, probability: 0.9 }
    const got = monteCarlo(massCalibration, few)
    expect(monteCarlo(massCalibration, few)).toEqual(got)
    expect(monteCarlo(massCalibration, { ...few, seed: 10 }).mean).not.toBe(got.mean)
    const counted = got.histogram.counts.reduce((sum, count) => sum + count, 0)
    expect(counted).toBe(5000 - 2 * 5) // a thousandth on each side lies outside
    expect(got.symmetricInterval[0]).toBeLessThan(got.mean)
    expect(got.symmetricInterval[1]).toBeGreaterThan(got.mean)
  })

  it('of constants is one value', () => {
    const model = { expression: 'a', quantities: [quantity('a', 3, 0)] }
    const got = monteCarlo(model, { trials: 1000, seed: 1, probability: 0.95 })
    expect(got).toMatchObject({ mean: 3, standardDeviation: 0, shortestInterval: [3, 3] })
  })

  it('says how many trials had no result, and refuses them', () => {
    const model = { expression: 'sqrt(a)', quantities: [quantity('a', 0, 1)] }
    const run = () => monteCarlo(model, { trials: 1000, seed: 1, probability: 0.95 })
    // Half of the draws are negative: 500, five standard deviations of 16.
    expect(run).toThrow(/not-finite at (4[2-9]\d|5[0-7]\d)/)
  })

  it.each([
    { trials: 999, seed: 1, probability: 0.95 },
    { trials: 5_000_001, seed: 1, probability: 0.95 },
    { trials: 1000, seed: -1, probability: 0.95 },
    { trials: 1000, seed: 1, probability: 1 },
  ])('refuses %j', (wrong) => {
    expect(() => monteCarlo(sumOfFour(1), wrong)).toThrow(RangeError)
  })
})
