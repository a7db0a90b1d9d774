import { describe, expect, it } from 'vitest'
import { requireFinite } from '../../../src/science/check/require-finite.ts'

describe('requireFinite', () => {
  it.each([0, -0, 1e308, -5e-324])('gives the finite number %d back unchanged', (value) => {
    expect(Object.is(requireFinite('f', 'x', value), value)).toBe(true)
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    'refuses %d and names function and parameter',
    (value) => {
      expect(() => requireFinite('umToUin', 'um', value)).toThrow(
        new RangeError(`umToUin requires um as a finite number, got ${value}`),
      )
    },
  )
})
