import { describe, expect, it } from 'vitest'
import { requireWhole } from '../../../src/science/check/require-whole.ts'

const range = { from: 1, to: 5 }

describe('requireWhole', () => {
  it.each([1, 3, 5])('gives the whole number %d back', (value) => {
    expect(requireWhole('f', 'count', value, range)).toBe(value)
  })

  it('refuses a fraction', () => {
    expect(() => requireWhole('f', 'count', 2.5, range)).toThrow(
      'f requires count whole from 1 to 5, got 2.5',
    )
  })

  it.each([0, 6, Number.NaN])('refuses %d outside the range', (value) => {
    expect(() => requireWhole('f', 'count', value, range)).toThrow(
      `f requires count from 1 to 5, got ${value}`,
    )
  })
})
