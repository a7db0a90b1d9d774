import { expect, it } from 'vitest'
import { readingNoise } from '../../../src/science/leak/reading-noise.ts'
import { seededNormal } from '../seeded-random.ts'

it('is the noise on a bent course', () => {
  const normal = seededNormal(4)
  const values = Array.from({ length: 4000 }, (_, i) => 1e-4 * i * i + 0.3 * normal())
  expect(readingNoise(values) / 0.3).toBeGreaterThan(0.95)
  expect(readingNoise(values) / 0.3).toBeLessThan(1.05)
})

it('is none of a line, and of too few', () => {
  expect(readingNoise([0, 2, 4, 6, 8])).toBe(0)
  expect(readingNoise([0, 5, 1, 7])).toBe(0)
})
