import { describe, expect, it } from 'vitest'
import { fittedLoadBudget } from '../../../src/science/spring/fitted-load-budget.ts'
import { springRate } from '../../../src/science/spring/spring-rate.ts'
import { combinedStandardUncertainty } from '../../../src/science/uncertainty/combined-standard-uncertainty.ts'
import { seededNormal } from '../seeded-random.ts'

const lengths = [28, 25, 22, 19, 16]
const load = (lengthMm: number) => 4.2 * (31.5 - lengthMm)
const deviation = (values: readonly number[]) => {
  const mean = values.reduce((a, b) => a + b, 0) / values.length
  return Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / (values.length - 1))
}

describe('the budget of a load off a line', () => {
  it.each([16, 20.5, 22, 28, 31.4])('is what 4000 trials scatter by, at %s mm', (working) => {
    const normal = seededNormal(11)
    const trials = Array.from({ length: 4000 }, () => {
      const fit = springRate(
        lengths.map((lengthMm) => ({
          lengthMm,
          loadN: Math.max(0, load(lengthMm) + 0.5 * normal()),
        })),
      )
      const at = fit.rateNPerMm * (fit.fittedFreeLengthMm - working)
      const budget = fittedLoadBudget(fit, { springsCount: 1, workingLengthMm: working }, {})
      return { at, variance: combinedStandardUncertainty(budget) ** 2 }
    })
    const scatter = deviation(trials.map((one) => one.at))
    const stated = Math.sqrt(trials.reduce((sum, one) => sum + one.variance, 0) / trials.length)
    expect(scatter / stated).toBeGreaterThan(0.96) // 4000 trials: 1.1 % of their own
    expect(scatter / stated).toBeLessThan(1.04)
  })

  it.each([12, 18, 26, 30])(
    'through two loads is what their lengths scatter it by, %s mm',
    (working) => {
      const normal = seededNormal(4)
      const u = 0.05
      const two = [30, 20].map((lengthMm) => ({ lengthMm, loadN: load(lengthMm) }))
      const known = { lengthStandardUncertaintyMm: u }
      const at = { springsCount: 6, workingLengthMm: working }
      const values = Array.from({ length: 8000 }, () => {
        const moved = two.map((one) => ({ ...one, lengthMm: one.lengthMm + u * normal() }))
        const { rateNPerMm, fittedFreeLengthMm } = springRate(moved)
        return 6 * rateNPerMm * (fittedFreeLengthMm - working - u * normal())
      })
      const stated = combinedStandardUncertainty(fittedLoadBudget(springRate(two), at, known))
      expect(deviation(values) / stated).toBeGreaterThan(0.97)
      expect(deviation(values) / stated).toBeLessThan(1.03)
    },
  )

  it('has a line for what is known alone', () => {
    const two = springRate([28, 16].map((lengthMm) => ({ lengthMm, loadN: load(lengthMm) })))
    const at = { springsCount: 6, workingLengthMm: 20 }
    expect(fittedLoadBudget(two, at, {})).toEqual([])
    const three = springRate(
      lengths.slice(0, 3).map((l, i) => ({ lengthMm: l, loadN: load(l) + (i % 2) })),
    )
    expect(fittedLoadBudget(three, at, {})).toMatchObject([
      { source: 'load-line', distribution: 't', degreesOfFreedom: 1, sensitivity: 6 },
    ])
    const known = { lengthStandardUncertaintyMm: 0.1 }
    expect(fittedLoadBudget(three, at, known).map((one) => one.source)).toEqual([
      'load-line',
      'working-length',
    ])
    expect(() => fittedLoadBudget(three, at, { lengthStandardUncertaintyMm: -1 })).toThrow(
      'lengthStandardUncertaintyMm',
    )
  })
})
