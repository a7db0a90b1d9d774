import { describe, expect, it } from 'vitest'
import { couldBeMissedUm } from '../../../src/science/runout/could-be-missed-um.ts'
import { totalIndicatorReadingUm } from '../../../src/science/runout/total-indicator-reading-um.ts'
import { readReference } from '../read-reference.ts'
import { seededUniform } from '../seeded-random.ts'
import { evenAngles, rad } from './even-turn.ts'

const { checks } = readReference<{
  checks: readonly { fn: string; input: { N: number }; expect: number }[]
}>('runout/checks.json')

describe('what positions could miss', () => {
  it('is 2 e (1 - cos(pi / N)) for N even positions, N even', () => {
    for (const count of [4, 6, 8, 12, 24]) {
      const wanted = 2 * 30 * (1 - Math.cos(Math.PI / count))
      expect(couldBeMissedUm(evenAngles(count), 30)).toBeCloseTo(wanted, 10)
    }
    const factors = checks.filter((one) => one.fn === 'tirWorstFactor')
    expect(factors.length).toBe(2)
    for (const one of factors) {
      const missed = couldBeMissedUm(evenAngles(one.input.N), 1)
      expect(1 - missed / 2).toBeCloseTo(one.expect, 12)
    }
  })

  it('is what a dense search over directions finds, at any angles', () => {
    const uniform = seededUniform(77)
    for (let trial = 0; trial < 40; trial++) {
      const angles = Array.from({ length: 3 + Math.floor(8 * uniform()) }, () => 360 * uniform())
      let least = 2
      for (let k = 0; k < 36_000; k++) {
        const cosines = angles.map((one) => Math.cos(rad(one - k / 100)))
        least = Math.min(least, Math.max(...cosines) - Math.min(...cosines))
      }
      // A step of 0.01 degree moves a cosine by at most 1.8e-4.
      expect(Math.abs(couldBeMissedUm(angles, 1) - (2 - least))).toBeLessThan(2e-4)
    }
  })

  it('bounds what really is missed, and is reached', () => {
    let most = 0
    for (let k = 0; k < 3600; k++) {
      const read = evenAngles(8).map((one) => 50 * Math.cos(rad(one - k / 10)))
      most = Math.max(most, 100 - totalIndicatorReadingUm(read))
    }
    const bound = couldBeMissedUm(evenAngles(8), 50)
    expect(most).toBeLessThanOrEqual(bound + 1e-9)
    expect(most).toBeGreaterThan(0.999 * bound)
  })
})

it.each([
  [() => couldBeMissedUm([0, 90], -1), 'eccentricityUm'],
  [() => couldBeMissedUm([0, 360], 1), 'count of positions'],
  [() => couldBeMissedUm([0, Number.NaN], 1), 'angleDeg'],
])('%s is refused with the name of what is wrong', (call, name) => {
  expect(call).toThrow(RangeError)
  expect(call).toThrow(name)
})
