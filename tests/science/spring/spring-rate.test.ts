import { describe, expect, it } from 'vitest'
import { springRate } from '../../../src/science/spring/spring-rate.ts'
import { fitLine } from '../../../src/science/statistics/fit-line.ts'
import { readReference } from '../read-reference.ts'
import { seededNormal } from '../seeded-random.ts'

interface LineCase {
  id: string
  input: { t: number[]; y: number[] }
  expect: { a: number; b: number; se: number }
}
const norris = readReference<LineCase[]>('leak/decay-cases.json').find(
  (one) => one.id === 'ols-norris',
)!

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

  it('gives the certified line of a published set, read from a longest length downwards', () => {
    const { t, y } = norris.input
    const { a, b, se } = norris.expect
    const longest = 1001
    const loads = t.map((x, index) => ({ lengthMm: longest - x, loadN: y[index] ?? Number.NaN }))
    const fit = springRate(loads)
    // NIST StRD, set Norris: ten digits in doubles, some lost by turning the lengths round.
    expect(Math.abs(fit.rateNPerMm / b - 1)).toBeLessThan(1e-10)
    expect(Math.abs((fit.rateStandardUncertaintyNPerMm ?? 0) / se - 1)).toBeLessThan(1e-9)
    expect(fit.fittedFreeLengthMm).toBeCloseTo(longest + a / b, 8)
  })

  it('goes with lengths and loads: longer by a piece, in another unit, in any order', () => {
    const normal = seededNormal(7)
    const lengths = [18, 16.5, 15, 13, 12.2]
    const loads = line(2.4, 20, lengths).map((one) => ({ ...one, loadN: one.loadN + normal() }))
    const fit = springRate(loads)
    const longer = springRate(loads.map((one) => ({ ...one, lengthMm: one.lengthMm + 7 })))
    expect(longer.rateNPerMm).toBeCloseTo(fit.rateNPerMm, 10) // doubles alone, as below
    expect(longer.fittedFreeLengthMm).toBeCloseTo(fit.fittedFreeLengthMm + 7, 9)
    const heavier = springRate(loads.map((one) => ({ ...one, loadN: one.loadN * 3 })))
    expect(heavier.rateNPerMm).toBeCloseTo(3 * fit.rateNPerMm, 10)
    expect(heavier.fittedFreeLengthMm).toBeCloseTo(fit.fittedFreeLengthMm, 9)
    expect(springRate(loads.toReversed()).rateNPerMm).toBeCloseTo(fit.rateNPerMm, 10)
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
