import { describe, expect, test } from 'vitest'
import type { Characteristic } from '../../src/domain/characteristic.ts'
import { compareTrials, probabilityOf } from '../../src/domain/compared-trials.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { evaluateLinear } from '../../src/science/uncertainty/evaluate-linear.ts'
import { monteCarlo } from '../../src/science/uncertainty/monte-carlo.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildStaticTest } from '../support/build-static-test.ts'

/** Enough for the ends to settle to a third of the tolerance. */
const million = { trials: 1_000_000, seed: 5 }
const tried = (characteristic: Characteristic, value: number, uncertainty: Uncertainty) => {
  const run = monteCarlo(uncertainty.model!, {
    ...million,
    probability: probabilityOf(uncertainty),
  })
  return compareTrials({ characteristic, value, uncertainty }, run)
}

describe('the model that is kept with a result', () => {
  const reading = buildFlatnessReading()
  const leak = buildStaticTest()
  const { flatnessUm, uncertainty: ofFlatness } = reading

  test.each([
    ['flatness', flatnessUm!, ofFlatness!],
    ['leak rate', leak.leakPaM3PerS, leak.leakUncertainty!],
    ['pressure drop', leak.pressureDropKPa, leak.dropUncertainty!],
  ])('gives the result and the uncertainty of its budget: %s', (_, value, uncertainty) => {
    const linear = evaluateLinear(uncertainty.model!, { probability: 0.95 })
    expect(linear.value / value).toBeCloseTo(1, 9) // rounding of doubles
    // The budget has the partials by hand, the model its own by differentiation.
    expect(linear.standardUncertainty / uncertainty.standardUncertainty).toBeCloseTo(1, 9)
  })

  test('of normal readings agrees with the budget to two digits: leak rate and drop', () => {
    expect(
      tried('static-leak-rate', leak.leakPaM3PerS, leak.leakUncertainty!).validation.isValid,
    ).toBe(true)
    expect(
      tried('static-drop', leak.pressureDropKPa, leak.dropUncertainty!).validation.isValid,
    ).toBe(true)
  })

  test('of two rectangular errors does not: their sum ends sooner than a bell', () => {
    const { validation, linear, run } = tried('flatness', flatnessUm!, ofFlatness!)
    expect(validation.isValid).toBe(false)
    expect(run.symmetricInterval[0]).toBeGreaterThan(linear.value - linear.expandedUncertainty)
    expect(run.symmetricInterval[1]).toBeLessThan(linear.value + linear.expandedUncertainty)
  })
})

describe('the probability that trials are asked about', () => {
  test('is the one that the factor stands for: 95.45 % for k = 2', () => {
    // JCGM 100:2008, table G.1.
    const known = { coverageFactor: 2, effectiveDegreesOfFreedom: null }
    expect(probabilityOf(known)).toBeCloseTo(0.9545, 4) // printed digits
  })

  test('is 95 % wherever the factor is Student’s t', () => {
    // JCGM 100:2008, table G.2: 2.57 for 5 degrees of freedom.
    const few = { coverageFactor: 2.570582, effectiveDegreesOfFreedom: 5 }
    expect(probabilityOf(few)).toBeCloseTo(0.95, 6) // digits of the factor
  })
})
