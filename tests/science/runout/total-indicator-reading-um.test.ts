import { expect, it } from 'vitest'
import { totalIndicatorReadingUm } from '../../../src/science/runout/total-indicator-reading-um.ts'

it('gives the worked total of the facts, and that of slices of a cylinder', () => {
  expect(totalIndicatorReadingUm([-10, 30])).toBe(40) // E14: -0.01 to +0.03 mm
  // E29: each slice 0.03 mm; highest +0.02 and lowest -0.09 over all of them.
  const slices = [
    [-10, 20],
    [-40, -10],
    [-90, -60],
  ]
  expect(slices.map(totalIndicatorReadingUm)).toEqual([30, 30, 30])
  expect(totalIndicatorReadingUm(slices.flat())).toBe(110)
})

it('is the same whatever the zero and the order, and follows the unit', () => {
  const values = [3, -7, 11, 0]
  const moved = values.map((one) => one + 1000).reverse()
  expect(totalIndicatorReadingUm(moved)).toBe(totalIndicatorReadingUm(values))
  expect(totalIndicatorReadingUm(values.map((one) => 25.4 * one))).toBeCloseTo(25.4 * 18, 10)
})

it('refuses one reading and a reading that is none', () => {
  expect(() => totalIndicatorReadingUm([1])).toThrow('count of readings')
  expect(() => totalIndicatorReadingUm([1, Number.NaN])).toThrow('reading')
})
