import { expect, it } from 'vitest'
import { seededGenerator } from '../../../src/science/uncertainty/seeded-generator.ts'

it('the same seed gives the same numbers, the next seed others', () => {
  const [one, same, other] = [seededGenerator(5), seededGenerator(5), seededGenerator(6)]
  const numbers = Array.from({ length: 50 }, () => one())
  expect(Array.from({ length: 50 }, () => same())).toEqual(numbers)
  expect(numbers.some((number) => number === other())).toBe(false)
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
