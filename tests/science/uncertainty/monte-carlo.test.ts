import { describe, expect, it } from 'vitest'
import { evaluateLinear } from '../../../src/science/uncertainty/evaluate-linear.ts'
import { monteCarlo } from '../../../src/science/uncertainty/monte-carlo.ts'
import { seededUniform } from '../seeded-random.ts'
import {
  comparisonLoss,
  fourAlike,
  gaugeBlock,
  massCalibration,
  oneTenTimes,
  published,
  quantity,
} from './gum-models.ts'

const options = { trials: 1_000_000, seed: 4, probability: 0.95 }

/** How far the further pair of ends lies apart. */
const distance = (one: readonly [number, number], other: readonly [number, number]): number =>
  Math.max(Math.abs(one[0] - other[0]), Math.abs(one[1] - other[1]))

describe('propagation of distributions', () => {
  it('gives the intervals of JCGM 101 9.2.3 and 9.2.4', () => {
    const four = monteCarlo(fourAlike, options)
    // 10^6 trials: the end of the interval scatters by 0.004 and 0.007, u by 0.07 %.
    expect(distance(four.symmetricInterval, published.fourAlike.recomputed.interval)).toBeLessThan(
      0.02,
    )
    expect(Math.abs(four.standardDeviation - 2)).toBeLessThan(0.01)
    const ten = monteCarlo(oneTenTimes, options)
    // 17.0 against 19.9 of the linear way.
    expect(distance(ten.symmetricInterval, published.oneTenTimes.recomputed.interval)).toBeLessThan(
      0.03,
    )
  })

  it('gives the mass of JCGM 101 9.3', () => {
    const got = monteCarlo(massCalibration, options)
    const { printed, recomputed } = published.mass
    expect(Math.abs(got.mean - recomputed.mean)).toBeLessThan(0.0004) // five of u / sqrt M
    expect(Math.abs(got.standardDeviation - recomputed.standardDeviation)).toBeLessThan(0.0004)
    expect(distance(got.symmetricInterval, recomputed.symmetricInterval)).toBeLessThan(0.002)
    // The printed one was found by trials as well: its ends wander by more.
    expect(distance(got.shortestInterval, printed.shortestInterval)).toBeLessThan(0.005)
  })

  it.each(published.comparisonLoss.cases)(
    'gives the comparison loss of JCGM 101 9.4 about $x1, where the linear way gives too little',
    ({ x1, printed, recomputed }) => {
      const { shortestInterval, ...got } = monteCarlo(comparisonLoss(x1), options)
      const linear = evaluateLinear(comparisonLoss(x1), { probability: 0.95 })
      expect(linear.standardUncertainty).toBeCloseTo(recomputed.linear, 15) // rounding
      const u = recomputed.standardDeviation
      expect(Math.abs(got.mean - recomputed.mean)).toBeLessThan(0.005 * u) // five of u / sqrt M
      expect(Math.abs(got.standardDeviation - u)).toBeLessThan(0.01 * u) // heavy upper tail
      // At 0 and 0.010 it begins where the distribution does; at 0.050 both ends wander.
      expect(distance(shortestInterval, recomputed.shortestInterval)).toBeLessThan(0.04 * u)
      // The printed digits, in 1e-6.
      expect(Math.abs(got.mean - printed.mean)).toBeLessThan(0.005 * u + 0.5e-6)
      expect(Math.abs(got.standardDeviation - printed.standardDeviation)).toBeLessThan(0.02 * u)
    },
  )

  it('gives the gauge block of JCGM 101 9.5, with limits that are not known themselves', () => {
    const got = monteCarlo(gaugeBlock, { ...options, probability: 0.99 })
    const { printed, recomputed } = published.gaugeBlock
    expect(Math.abs(got.mean - recomputed.mean)).toBeLessThan(0.18) // five of u / sqrt M
    // Few degrees of freedom make heavy tails: u scatters by 0.03 nm.
    expect(Math.abs(got.standardDeviation - recomputed.standardDeviation)).toBeLessThan(0.15)
    expect(Math.round(got.standardDeviation)).toBe(printed.standardDeviation)
    // An end of 99 % scatters by sqrt(p q / M) / density = 0.18 nm; the shortest wanders.
    expect(distance(got.symmetricInterval, recomputed.symmetricInterval)).toBeLessThan(1)
    expect(distance(got.shortestInterval, recomputed.shortestInterval)).toBeLessThan(2)
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
    ['1e200 * a', 'whose squares'],
    ['1e306 * (a + 10)', 'whose sum'],
  ])('refuses %s, %s a double can no longer hold', (expression) => {
    const model = { expression, quantities: [quantity('a', 0, 1)] }
    const run = () => monteCarlo(model, { trials: 1000, seed: 1, probability: 0.95 })
    expect(run).toThrow('not-finite')
  })

  it.each([
    { trials: 999, seed: 1, probability: 0.95 },
    { trials: 5_000_001, seed: 1, probability: 0.95 },
    { trials: 1000, seed: -1, probability: 0.95 },
    { trials: 1000, seed: 1, probability: 1 },
  ])('refuses %j', (wrong) => {
    expect(() => monteCarlo(fourAlike, wrong)).toThrow(RangeError)
  })
})
