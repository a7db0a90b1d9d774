import { describe, expect, it } from 'vitest'
import { fUpperTail } from '../../../src/science/statistics/f-upper-tail.ts'
import { studentTUpperTail } from '../../../src/science/statistics/student-t-upper-tail.ts'
import { readReference } from '../read-reference.ts'

const table =
  readReference<{ v1: number; v2: number; tail: number; printed: number }[]>(
    'statistics/f-table.json',
  )
const tail = (f: number, v1: number, v2: number) =>
  fUpperTail({ f, numeratorDegreesOfFreedom: v1, denominatorDegreesOfFreedom: v2 })

describe('fUpperTail', () => {
  it.each(table)('finds the tail $tail of the printed $printed for $v1 and $v2', (row) => {
    // Printed to three decimals: the tail moves by less than 0.0001.
    expect(Math.abs(tail(row.printed, row.v1, row.v2) - row.tail)).toBeLessThan(0.0001)
  })

  it('agrees with the closed form for two numerator degrees of freedom', () => {
    for (const f of [0.3, 1, 4, 40]) {
      for (const v2 of [1, 7.5, 60]) {
        // Closed form (1 + 2 f / v2)^(-v2 / 2); rounding only.
        expect(Math.abs(tail(f, 2, v2) / (1 + (2 * f) / v2) ** (-v2 / 2) - 1)).toBeLessThan(1e-12)
      }
    }
  })

  it('is twice the tail of t for one numerator degree of freedom', () => {
    const twice = 2 * studentTUpperTail({ t: 1.7, degreesOfFreedom: 9 })
    expect(tail(1.7 * 1.7, 1, 9)).toBeCloseTo(twice, 13) // rounding only
  })

  it('falls from 1 as f rises', () => {
    expect(tail(0, 2, 5)).toBe(1)
    expect(tail(2, 2, 5)).toBeGreaterThan(tail(3, 2, 5))
    expect(tail(1e300, 2, 5)).toBeGreaterThanOrEqual(0)
  })

  it.each([
    [-1, 2, 5],
    [Number.NaN, 2, 5],
    [1, 0, 5],
    [1, 2, 0],
  ])('refuses f %d with %d and %d', (f, v1, v2) => {
    expect(() => tail(f, v1, v2)).toThrow(RangeError)
  })
})
