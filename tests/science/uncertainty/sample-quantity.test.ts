import { expect, it } from 'vitest'
import type { Distribution } from '../../../src/science/uncertainty/distributions.ts'
import { sampleQuantity } from '../../../src/science/uncertainty/sample-quantity.ts'
import { seededGenerator } from '../../../src/science/uncertainty/seeded-generator.ts'

const count = 200_000

function sampled(distribution: Distribution, degreesOfFreedom: number | null = null) {
  const block = new Float64Array(count)
  const quantity = { name: 'x', value: 3, distribution, standardUncertainty: 2, degreesOfFreedom }
  sampleQuantity(quantity, seededGenerator(11), block)
  const mean = block.reduce((sum, x) => sum + x, 0) / count
  const moment = (power: number) => block.reduce((sum, x) => sum + (x - mean) ** power, 0) / count
  const deviation = Math.sqrt(moment(2))
  return { block, mean, deviation, kurtosis: moment(4) / moment(2) ** 2 }
}

// Kurtosis by the closed forms: 3, 9/5, 12/5, 3/2; t with 10 degrees of freedom 3 + 6/6.
it.each([
  ['normal', null, 1, 3],
  ['rectangular', null, 1, 1.8],
  ['triangular', null, 1, 2.4],
  ['u-shaped', null, 1, 1.5],
  ['t', 10, Math.sqrt(10 / 8), 4],
] as const)('%s has its mean, its scatter and its shape', (distribution, degrees, scale, shape) => {
  const { mean, deviation, kurtosis } = sampled(distribution, degrees)
  // Five standard deviations of a mean of 200 000, u = 2.
  expect(Math.abs(mean - 3)).toBeLessThan((5 * 2 * scale) / Math.sqrt(count))
  // The scatter scatters by less than 1 / sqrt(count), relative.
  expect(Math.abs(deviation / (2 * scale) - 1)).toBeLessThan(5 / Math.sqrt(count))
  // Heavy tails make the fourth moment scatter most: seen 0.02 for normal, 0.1 for t.
  expect(Math.abs(kurtosis - shape)).toBeLessThan(distribution === 't' ? 0.4 : 0.06)
})

it.each([
  ['rectangular', Math.sqrt(3)],
  ['triangular', Math.sqrt(6)],
  ['u-shaped', Math.SQRT2],
] as const)('%s stays within its half width', (distribution, halfWidth) => {
  const furthest = sampled(distribution).block.reduce(
    (most, x) => Math.max(most, Math.abs(x - 3)),
    0,
  )
  expect(furthest).toBeLessThanOrEqual(2 * halfWidth * (1 + 1e-12)) // rounding
  // 200 000 draws come near it: of the triangular one in 1e4 is in the last hundredth.
  expect(furthest).toBeGreaterThan(2 * halfWidth * 0.99)
})

it('without uncertainty every draw is the value', () => {
  const block = new Float64Array(3)
  const quantity = {
    name: 'x',
    value: 7,
    distribution: 't',
    standardUncertainty: 0,
    degreesOfFreedom: 4,
  } as const
  sampleQuantity(quantity, seededGenerator(1), block)
  expect([...block]).toEqual([7, 7, 7])
})
