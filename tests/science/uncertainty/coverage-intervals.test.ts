import { expect, it } from 'vitest'
import { coverageIntervals } from '../../../src/science/uncertainty/coverage-intervals.ts'

it('evenly spaced trials are covered from the middle', () => {
  const sorted = Float64Array.from({ length: 1001 }, (_, index) => index)
  const { symmetric, shortest } = coverageIntervals(sorted, 0.95)
  // q = 951, r = (1001 - 951) / 2 = 25 counted from 1; JCGM 101:2008, 7.7.2.
  expect(symmetric).toEqual([24, 975])
  expect(shortest[1] - shortest[0]).toBe(951)
})

it('the shortest interval of a one-sided distribution begins at its end', () => {
  // Quantiles of the exponential distribution: the shortest 95 % go from 0 to -ln 0.05 = 2.996.
  const sorted = Float64Array.from({ length: 10_001 }, (_, i) => Math.log(10_002 / (10_002 - i)))
  const { symmetric, shortest } = coverageIntervals(sorted, 0.95)
  expect(shortest[0]).toBe(0)
  expect(shortest[1]).toBeCloseTo(2.996, 2) // one step of the quantiles is 0.002 there
  expect(symmetric[0]).toBeCloseTo(-Math.log(0.975), 3)
  expect(symmetric[1]).toBeCloseTo(-Math.log(0.025), 1)
  expect(shortest[1] - shortest[0]).toBeLessThan(symmetric[1] - symmetric[0])
})

it.each([
  [99, 0.95],
  [1000, 0],
  [1000, 1],
])('refuses %s trials with a probability of %s', (length, probability) => {
  expect(() => coverageIntervals(new Float64Array(length), probability)).toThrow(RangeError)
})
