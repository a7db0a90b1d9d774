import { expect, it } from 'vitest'
import { workingLoad } from '../../../src/science/spring/working-load.ts'
import { workingLoadBudget } from '../../../src/science/spring/working-load-budget.ts'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { seededNormal } from '../seeded-random.ts'

const springs = { springsCount: 6, rateNPerMm: 3, freeLengthMm: 20, workingLengthMm: 14 } as const
const known = { rateStandardUncertaintyNPerMm: 0.05, lengthStandardUncertaintyMm: 0.04 } as const

it('is the scatter of the load that 20 000 trials show', () => {
  const normal = seededNormal(6)
  const loads = Array.from(
    { length: 20_000 },
    () =>
      workingLoad({
        springsCount: 6,
        rateNPerMm: 3 + 0.05 * normal(),
        freeLengthMm: 20 + 0.04 * normal(),
        workingLengthMm: 14 + 0.04 * normal(),
      }).loadN,
  )
  const mean = loads.reduce((a, b) => a + b, 0) / loads.length
  const sd = Math.sqrt(loads.reduce((a, b) => a + (b - mean) ** 2, 0) / (loads.length - 1))
  const stated = combinedStandardUncertainty(workingLoadBudget(springs, known))
  expect(stated).toBeCloseTo(Math.hypot(6 * 6 * 0.05, 18 * 0.04 * Math.SQRT2), 12)
  expect(sd / stated).toBeGreaterThan(0.98) // 20 000 trials: 0.5 % of their own
  expect(sd / stated).toBeLessThan(1.02)
})

it('has a line for what is known alone', () => {
  expect(workingLoadBudget(springs, {})).toEqual([])
  const stated = workingLoadBudget(springs, { rateStandardUncertaintyNPerMm: 0.05 })
  expect(stated).toMatchObject([{ source: 'rate', distribution: 'normal' }])
})

it('refuses an uncertainty below 0', () => {
  expect(() => workingLoadBudget(springs, { lengthStandardUncertaintyMm: -1 })).toThrow(
    'lengthStandardUncertaintyMm',
  )
  expect(() => workingLoadBudget(springs, { rateStandardUncertaintyNPerMm: -1 })).toThrow(
    'rateStandardUncertaintyNPerMm',
  )
})
