import { expect, it } from 'vitest'
import { runOutBudget } from '../../../src/science/runout/run-out-budget.ts'
import { totalIndicatorReadingUm } from '../../../src/science/runout/total-indicator-reading-um.ts'
import { seededNormal } from '../seeded-random.ts'
import { evenAngles, rad } from './even-turn.ts'

it('is what noisy turns of a shaft with one highest and one lowest place show', () => {
  const normal = seededNormal(31)
  const totals = Array.from({ length: 4000 }, () =>
    totalIndicatorReadingUm(evenAngles(4).map((deg) => 50 * Math.cos(rad(deg)) + normal())),
  )
  const mean = totals.reduce((a, b) => a + b, 0) / totals.length
  const sd = Math.sqrt(totals.reduce((a, b) => a + (b - mean) ** 2, 0) / (totals.length - 1))
  const [line] = runOutBudget(1)
  expect(line?.contribution).toBeCloseTo(Math.SQRT2, 12)
  expect(sd / Math.SQRT2).toBeGreaterThan(0.96) // 4000 trials: 1.1 % of their own
  expect(sd / Math.SQRT2).toBeLessThan(1.04)
})

it('refuses an uncertainty below 0', () => {
  expect(() => runOutBudget(-1)).toThrow('readingStandardUncertaintyUm')
})
