import { expect, it } from 'vitest'
import { harmonicColumns } from '../../../src/science/runout/harmonic-columns.ts'

it('gives ones, then cosine and sine of each order', () => {
  const columns = harmonicColumns([0, 30, 90], 2)
  expect(columns).toHaveLength(5)
  const wanted = [
    [1, 1, 1],
    [1, Math.sqrt(3) / 2, 0],
    [0, 0.5, 1],
    [1, 0.5, -1],
    [0, Math.sqrt(3) / 2, 0],
  ]
  wanted.forEach((column, k) => {
    column.forEach((value, i) => {
      expect(columns[k]?.[i]).toBeCloseTo(value, 12) // rounding of pi
    })
  })
  expect(harmonicColumns([5], 0)).toEqual([[1]])
})
