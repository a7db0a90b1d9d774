import { describe, expect, it } from 'vitest'
import { fitLine } from '../../../src/science/statistics/fit-line.ts'
import { readReference } from '../read-reference.ts'

interface LineCase {
  id: string
  kind: string
  input: { t: number[]; y: number[] }
  expect: { a: number; b: number; s: number; se: number }
}
const cases = readReference<LineCase[]>('leak/decay-cases.json').filter((c) => c.kind === 'line')

describe('fitLine', () => {
  it.each(cases)('gives the reference line of $id', (row) => {
    const line = fitLine({ x: row.input.t, y: row.input.y })
    // NIST StRD certified values and an independent library: ten digits in doubles.
    expect(Math.abs(line.slope / row.expect.b - 1)).toBeLessThan(1e-10)
    expect(Math.abs(line.intercept / row.expect.a - 1)).toBeLessThan(1e-10)
    expect(Math.abs(line.residualStandardDeviation / row.expect.s - 1)).toBeLessThan(1e-9)
    expect(Math.abs(line.slopeStandardError / row.expect.se - 1)).toBeLessThan(1e-9)
  })

  it('has both reference cases', () => {
    expect(cases.map((c) => c.id)).toEqual(['ols-norris', 'ar-line-a'])
  })

  it('finds a slope of 1e-6 on a level of 6e5 exactly enough', () => {
    const x = Array.from({ length: 200 }, (_, i) => i)
    const y = x.map((t) => 600_000 - 1e-6 * t)
    // The values themselves are rounded to 1e-10: over 200 points that is 1e-13 in the slope.
    expect(fitLine({ x, y }).slope).toBeCloseTo(-1e-6, 12)
  })

  it('gives exactly zero for equal values', () => {
    const line = fitLine({ x: [0, 1, 2, 3], y: [271.3, 271.3, 271.3, 271.3] })
    expect(line.slope).toBeCloseTo(0, 20)
    expect(line.sumOfSquares).toBe(0)
  })

  it('scales with y and does not move with the start of x', () => {
    const x = [0, 1, 2, 5, 7]
    const y = [1, 3, 2, 6, 5]
    const line = fitLine({ x, y })
    const moved = fitLine({ x: x.map((t) => t + 1e6), y: y.map((v) => 3 * v) })
    expect(moved.slope).toBeCloseTo(3 * line.slope, 9) // centring after 1e6 loses six digits
    expect(moved.slopeStandardError).toBeCloseTo(3 * line.slopeStandardError, 9)
    expect(line.slopeStandardError).toBeCloseTo(
      line.residualStandardDeviation * line.slopePerNoise,
      14,
    )
  })

  it.each([
    { x: [0, 1], y: [0, 1] },
    { x: [1, 1, 1], y: [0, 1, 2] },
    { x: [0, 1, 2], y: [0, 1] },
  ])('refuses %o', (input) => {
    expect(() => fitLine(input)).toThrow(RangeError)
  })
})
