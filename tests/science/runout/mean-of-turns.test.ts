import { expect, it } from 'vitest'
import { meanOfTurns } from '../../../src/science/runout/mean-of-turns.ts'
import { seededNormal } from '../seeded-random.ts'

it('takes out the zero of each turn', () => {
  const turn = [0, 7, 24, 38, 40, 33, 16, 2]
  const mean = meanOfTurns([turn, turn.map((one) => one + 500)])
  expect(mean.standardDeviationUm).toBeCloseTo(0, 10)
  expect(mean.degreesOfFreedom).toBe(7)
  turn.forEach((one, i) => {
    expect(mean.valuesUm[i]).toBeCloseTo(one - 20, 10)
  })
})

it('finds the scatter that was put in', () => {
  const normal = seededNormal(21)
  const turns = Array.from({ length: 40 }, () =>
    Array.from({ length: 12 }, (_, i) => 30 * Math.cos(i) + 2.5 * normal()),
  )
  const { standardDeviationUm, degreesOfFreedom } = meanOfTurns(turns)
  expect(degreesOfFreedom).toBe(39 * 11)
  // 429 degrees of freedom: 3.4 % of its own.
  expect(standardDeviationUm).toBeGreaterThan(2.25)
  expect(standardDeviationUm).toBeLessThan(2.75)
})

it('knows no scatter of one turn, and refuses unequal ones', () => {
  expect(meanOfTurns([[1, 3]])).toMatchObject({ standardDeviationUm: null, valuesUm: [-1, 1] })
  expect(() => meanOfTurns([[1, 2], [1]])).toThrow('count of readings')
  expect(() => meanOfTurns([])).toThrow('count of turns')
  expect(() => meanOfTurns([[1, Number.NaN]])).toThrow('reading')
})
