import { expect, it } from 'vitest'
import { secondOrderVariance } from '../../../src/science/uncertainty/second-order-variance.ts'
import {
  comparisonLoss,
  endGauge,
  massCalibration,
  oneTenTimes,
  published,
  quantity,
} from './gum-models.ts'

it('gives the second-order parts of JCGM 100 H.1.7', () => {
  const { secondOrderParts, standardUncertainty, secondOrderStandardUncertainty } =
    published.endGauge.recomputed
  const variance = secondOrderVariance(endGauge)
  // A bilinear model: differences of its slopes are exact but for rounding of 50 000 000.
  expect(Math.sqrt(variance)).toBeCloseTo(Math.hypot(...secondOrderParts), 3)
  // Printed (from memory): 11.7 and 1.7 nm, together with 32 nm 34 nm.
  const whole = Math.hypot(standardUncertainty, Math.sqrt(variance))
  expect(whole).toBeCloseTo(secondOrderStandardUncertainty, 3)
})

it('gives the closed form for squares about zero', () => {
  // The variance of x^2 about 0 is 2 u^4, twice over; JCGM 101 9.4: 50e-6.
  expect(secondOrderVariance(comparisonLoss(0))).toBeCloseTo(4 * 0.005 ** 4, 14)
})

it('brings the mass of JCGM 101 9.3 from 0.0539 to 0.0750', () => {
  const { standardUncertainty: first, secondOrderStandardUncertainty } = published.mass.recomputed
  const second = secondOrderVariance(massCalibration)
  // Differences of curved slopes: good to about 1 % of the 0.0039 that they add.
  expect(Math.sqrt(first ** 2 + second)).toBeCloseTo(secondOrderStandardUncertainty, 4)
})

it('is nothing for a linear model, and negative where the curve flattens', () => {
  expect(secondOrderVariance(oneTenTimes)).toBe(0)
  // sin at its steepest: f f''' < 0, and f'' = 0.
  const model = { expression: 'sin(x)', quantities: [quantity('x', 0, 0.1)] }
  expect(secondOrderVariance(model)).toBeCloseTo(-(0.1 ** 4), 6) // -cos^2 u^4, differences to 1 %
})

it('adds up what fifty quantities in 250 terms give', () => {
  const names = Array.from({ length: 50 }, (_, index) => `x${index}`)
  const terms = Array.from({ length: 250 }, (_, index) => `x${index % 50}^2`)
  const model = {
    expression: terms.join('+'),
    quantities: names.map((name) => quantity(name, 0, 1)),
  }
  // Five squares of each about 0: variance 2 (5 u^2)^2, fifty times; rounding.
  expect(secondOrderVariance(model)).toBeCloseTo(2500, 6)
})
