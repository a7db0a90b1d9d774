import { describe, expect, it } from 'vitest'
import { springRate } from '../../../src/science/spring/spring-rate.ts'
import { fitLine } from '../../../src/science/statistics/fit-line.ts'
import { seededNormal } from '../seeded-random.ts'

const line = (rate: number, free: number, lengths: readonly number[]) =>
  lengths.map((lengthMm) => ({ lengthMm, loadN: rate * (free - lengthMm) }))

describe('the rate of a spring', () => {
  it('is that of the line its loads lie on, with its free length', () => {
    const fit = springRate(line(4.2, 31.5, [28, 25, 22, 19]))
    expect(fit.rateNPerMm).toBeCloseTo(4.2, 11)
    expect(fit.fittedFreeLengthMm).toBeCloseTo(31.5, 10)
    expect(fit.rateStandardUncertaintyNPerMm).toBeCloseTo(0, 10)
    expect(fit.degreesOfFreedom).toBe(2)
  })

  it('agrees with a line fitted by another way, and its standard error', () => {
    const normal = seededNormal(2)
    const loads = line(3, 40, [36, 33, 30, 27, 24]).map((one) => ({
      ...one,
      loadN: one.loadN + 0.4 * normal(),
    }))
    const other = fitLine({
      x: loads.map((one) => one.lengthMm),
      y: loads.map((one) => one.loadN),
    })
    const fit = springRate(loads)
    expect(fit.rateNPerMm).toBeCloseTo(-other.slope, 10)
    expect(fit.rateStandardUncertaintyNPerMm).toBeCloseTo(other.slopeStandardError, 10)
    expect(fit.fittedFreeLengthMm).toBeCloseTo(-other.intercept / other.slope, 8)
  })

  it('has no uncertainty from two loads', () => {
    expect(springRate(line(5, 30, [25, 20])).rateStandardUncertaintyNPerMm).toBeNull()
  })

  it.each([
    [[{ lengthMm: 30, loadN: 1 }], 'count of loads'],
    [line(-1, 5, [28, 25]), 'rising'],
    [
      [
        { lengthMm: 30, loadN: 1 },
        { lengthMm: 30, loadN: 2 },
      ],
      'independent',
    ],
    [
      [
        { lengthMm: 30, loadN: -1 },
        { lengthMm: 20, loadN: 2 },
      ],
      'loadN',
    ],
  ])('refuses %o', (loads, name) => {
    expect(() => springRate(loads)).toThrow(RangeError)
    expect(() => springRate(loads)).toThrow(name)
  })
})
