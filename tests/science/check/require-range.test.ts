import { describe, expect, it } from 'vitest'
import { requireRange } from '../../../src/science/check/require-range.ts'

const range = { from: 0, to: 80 }

describe('requireRange', () => {
  it.each([0, 40, 80])('gives %d back, both ends included', (value) => {
    expect(requireRange('f', 'x', value, range)).toBe(value)
  })

  it.each([-1e-12, 80.000001, Number.NaN, Number.POSITIVE_INFINITY])(
    'refuses %d with the range and what it got',
    (value) => {
      expect(() => requireRange('bandHeightUm', 'viewingAngleDeg', value, range)).toThrow(
        new RangeError(`bandHeightUm requires viewingAngleDeg from 0 to 80, got ${value}`),
      )
    },
  )
})
