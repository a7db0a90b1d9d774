import { expect, it } from 'vitest'
import { seededGenerator } from '../../../src/science/uncertainty/seeded-generator.ts'

it('the same seed gives the same numbers, the next seed others', () => {
  const [one, same, other] = [seededGenerator(5), seededGenerator(5), seededGenerator(6)]
  const numbers = Array.from({ length: 50 }, () => one())
  expect(Array.from({ length: 50 }, () => same())).toEqual(numbers)
  expect(numbers.some((number) => number === other())).toBe(false)
})

// Own derivation: the same recurrence in another language, whose whole numbers have no end.
it.each([
  [1, [0.7601436350023664, 0.9171349392853646, 0.4731664834695838]],
  [0xffffffff, [0.6581595261242635, 0.1427211401438876, 0.3097349249925456]],
])('seed %s begins the same on every machine and in every version', (seed, numbers) => {
  const next = seededGenerator(seed)
  expect(numbers.map(() => next())).toEqual(numbers)
})

it('numbers fill the range evenly and do not follow each other', () => {
  const count = 100_000
  const next = seededGenerator(1)
  const bins = new Array<number>(100).fill(0)
  let product = 0
  let outside = 0
  let before = next()
  for (let i = 0; i < count; i++) {
    const number = next()
    if (!(number >= 0 && number < 1)) outside++
    bins[Math.floor(number * 100)] = (bins[Math.floor(number * 100)] ?? 0) + 1
    product += (number - 0.5) * (before - 0.5)
    before = number
  }
  expect(outside).toBe(0)
  const chiSquared = bins.reduce((sum, seen) => sum + (seen - count / 100) ** 2 / (count / 100), 0)
  // 99 degrees of freedom: mean 99, standard deviation 14; five of them either way.
  expect(Math.abs(chiSquared - 99)).toBeLessThan(70)
  // Correlation 12 x mean product, standard deviation 1 / sqrt(count); five of them.
  expect(Math.abs((12 * product) / count)).toBeLessThan(5 / Math.sqrt(count))
})

it.each([-1, 0.5, 2 ** 32, Number.NaN])('refuses the seed %s', (seed) => {
  expect(() => seededGenerator(seed)).toThrow(RangeError)
})
