import { describe, expect, it } from 'vitest'
import { studentTQuantile } from '../../../src/science/statistics/student-t-quantile.ts'
import { studentTUpperTail } from '../../../src/science/statistics/student-t-upper-tail.ts'
import { readReference } from '../read-reference.ts'

const table = readReference<{ degreesOfFreedom: number; probability: number; printed: number }[]>(
  'statistics/student-t-table.json',
)
const exact = readReference<{ degreesOfFreedom: number; probability: number; t: number }[]>(
  'statistics/student-t-scipy.json',
)

describe('studentTQuantile', () => {
  it.each(table)('gives the printed $printed for $degreesOfFreedom and $probability', (row) => {
    // Printed to three decimals.
    expect(Math.abs(studentTQuantile(row) - row.printed)).toBeLessThan(0.00051)
  })

  it.each(exact)('agrees with SciPy for $degreesOfFreedom and $probability', (row) => {
    // The tail is good to about 12 digits; far out the quantile keeps ten.
    expect(Math.abs(studentTQuantile(row) / row.t - 1)).toBeLessThan(1e-10)
  })

  it('undoes the upper tail and is odd about a half', () => {
    for (const degreesOfFreedom of [0.8, 3, 40.5]) {
      const t = studentTQuantile({ probability: 0.9, degreesOfFreedom })
      // bisection to the last digit
      expect(studentTUpperTail({ t, degreesOfFreedom })).toBeCloseTo(0.1, 13)
      // 1 - 0.9 is rounded
      expect(studentTQuantile({ probability: 0.1, degreesOfFreedom })).toBeCloseTo(-t, 12)
    }
    expect(studentTQuantile({ probability: 0.5, degreesOfFreedom: 3 })).toBe(0)
  })

  it.each([
    { probability: 0, degreesOfFreedom: 5 },
    { probability: 1, degreesOfFreedom: 5 },
    { probability: Number.NaN, degreesOfFreedom: 5 },
    { probability: 0.9, degreesOfFreedom: 0.4 },
  ])('refuses %o', (input) => {
    expect(() => studentTQuantile(input)).toThrow(RangeError)
  })
})
