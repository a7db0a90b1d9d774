import { expect, it } from 'vitest'
import { leastSquaresRoundnessUm } from '../../../src/science/runout/least-squares-roundness-um.ts'
import { eightPositions, evenTurn, rad } from './even-turn.ts'

it('gives the published range about the least-squares circle', () => {
  expect(leastSquaresRoundnessUm(eightPositions)).toBeCloseTo(1.92, 3) // E13
})

it('is twice the amplitude of an oval, whatever its offset', () => {
  const oval = Array.from({ length: 72 }, (_, i) => {
    return 40 * Math.cos(rad(5 * i - 50)) + 3 * Math.cos(rad(10 * i))
  })
  expect(leastSquaresRoundnessUm(evenTurn(oval))).toBeCloseTo(6, 10) // crests are read
})

it('refuses two positions', () => {
  expect(() => leastSquaresRoundnessUm(eightPositions.slice(0, 2))).toThrow('count of positions')
})
