import { describe, expect, it } from 'vitest'
import { studentTUpperTail } from '../../../src/science/statistics/student-t-upper-tail.ts'
import { readReference } from '../read-reference.ts'

const table = readReference<{ degreesOfFreedom: number; probability: number; printed: number }[]>(
  'statistics/student-t-table.json',
)

describe('studentTUpperTail', () => {
  it.each(table)('finds the tail of the printed t $printed for $degreesOfFreedom', (row) => {
    const tail = studentTUpperTail({ t: row.printed, degreesOfFreedom: row.degreesOfFreedom })
    // The table prints three decimals; half of the last moves the tail by less than 0.0002.
    expect(Math.abs(tail - (1 - row.probability))).toBeLessThan(0.0002)
  })

  it('agrees with the closed forms for 1 and 2 degrees of freedom', () => {
    for (const t of [0.1, 1, 2.5, 12.7]) {
      // Closed forms; rounding only.
      expect(studentTUpperTail({ t, degreesOfFreedom: 1 })).toBeCloseTo(
        0.5 - Math.atan(t) / Math.PI,
        13,
      )
      expect(studentTUpperTail({ t, degreesOfFreedom: 2 })).toBeCloseTo(
        0.5 - t / (2 * Math.sqrt(2 + t * t)),
        13,
      )
    }
  })

  it('is symmetric about a half', () => {
    expect(studentTUpperTail({ t: 0, degreesOfFreedom: 5 })).toBe(0.5)
    const above = studentTUpperTail({ t: 1.3, degreesOfFreedom: 5 })
    expect(above + studentTUpperTail({ t: -1.3, degreesOfFreedom: 5 })).toBe(1)
  })

  it.each([
    { t: Number.NaN, degreesOfFreedom: 5 },
    { t: 1, degreesOfFreedom: 0 },
  ])('refuses %o', (input) => {
    expect(() => studentTUpperTail(input)).toThrow(RangeError)
  })
})
