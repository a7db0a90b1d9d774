import { expect, it } from 'vitest'
import { highestOrderFor } from '../../../src/science/runout/highest-order-for.ts'
import { evenAngles } from './even-turn.ts'

it('never asks for more waves than the positions can tell', () => {
  const told = [3, 4, 5, 7, 8, 12, 31, 36].map((one) => highestOrderFor(evenAngles(one)))
  expect(told).toEqual([1, 1, 2, 3, 3, 5, 15, 15])
})

it('asks for fewer where the positions crowd or repeat', () => {
  expect(highestOrderFor([0, 1, 2, 3, 4, 5, 6, 7, 8])).toBe(1)
  expect(highestOrderFor([0, 90, 180, 270, 360])).toBe(1)
  expect(highestOrderFor([...evenAngles(8), ...evenAngles(8)])).toBe(3)
})

it('refuses fewer than three positions', () => {
  expect(() => highestOrderFor([0, 180, 360])).toThrow('count of positions')
})
