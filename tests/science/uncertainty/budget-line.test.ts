import { describe, expect, it } from 'vitest'
import { budgetLine } from '../../../src/science/uncertainty/budget-line.ts'

const line = { source: 'volume', value: 0.02, distribution: 'normal', sensitivity: -0.5 } as const

describe('budgetLine', () => {
  it('multiplies value by the size of the sensitivity', () => {
    expect(budgetLine(line).contribution).toBe(0.01)
  })

  it('says infinitely many degrees of freedom as null and keeps a finite count', () => {
    expect(budgetLine(line).degreesOfFreedom).toBeNull()
    expect(budgetLine({ ...line, degreesOfFreedom: 2 }).degreesOfFreedom).toBe(2)
  })

  it.each([
    { value: -1 },
    { value: Number.NaN },
    { sensitivity: Number.NaN },
    { degreesOfFreedom: 0 },
  ])('refuses %o', (wrong) => {
    expect(() => budgetLine({ ...line, ...wrong })).toThrow(RangeError)
  })
})
