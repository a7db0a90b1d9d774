import { expect, it } from 'vitest'
import { secondOrderVariance } from '../../../src/science/uncertainty/second-order-variance.ts'
import { comparisonLoss, endGauge, massCalibration, quantity, sumOfFour } from './gum-models.ts'

it('gives the second-order parts of JCGM 100 H.1.7', () => {
  // Printed (from memory): 11.7 and 1.7 nm; together sqrt(11.7^2 + 1.7^2) = 11.8 nm.
  expect(Math.sqrt(secondOrderVariance(endGauge))).toBeCloseTo(11.8, 1)
})

it('gives the closed form for squares about zero', () => {
  // The variance of x^2 about 0 is 2 u^4, twice over; JCGM 101 9.4: 50e-6.
  expect(secondOrderVariance(comparisonLoss(0))).toBeCloseTo(4 * 0.005 ** 4, 14)
})

it('brings the mass of JCGM 101 9.3 from 0.0539 to 0.0750', () => {
  const first = 0.05 ** 2 + 0.02 ** 2
  const second = secondOrderVariance(massCalibration)
  expect(Math.sqrt(first + second)).toBeCloseTo(0.075, 3) // printed with three digits
})

it('is nothing for a linear model, and negative where the curve flattens', () => {
  expect(secondOrderVariance(sumOfFour(10))).toBe(0)
  // sin at its steepest: f f''' < 0, and f'' = 0.
  const model = { expression: 'sin(x)', quantities: [quantity('x', 0, 0.1)] }
  expect(secondOrderVariance(model)).toBeCloseTo(-(0.1 ** 4), 6) // -cos^2 u^4, differences to 1 %
})
