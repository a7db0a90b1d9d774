import { describe, expect, it } from 'vitest'
import { requireConformityInput } from '../../../src/science/acceptance/require-conformity-input.ts'

const sound = { value: 1, standardUncertainty: 0.1, upperLimit: 2 }

describe('requireConformityInput', () => {
  it('gives an open side as an infinity, and nothing is cut unless stated', () => {
    expect(requireConformityInput('f', sound)).toEqual({
      value: 1,
      u: 0.1,
      lower: Number.NEGATIVE_INFINITY,
      upper: 2,
      isNonNegative: false,
    })
    const lower = requireConformityInput('f', { value: 1, standardUncertainty: 0, lowerLimit: 0 })
    expect([lower.lower, lower.upper]).toEqual([0, Number.POSITIVE_INFINITY])
  })

  it('takes a measured value a little below 0 of a quantity that is not', () => {
    expect(requireConformityInput('f', { ...sound, value: -3, isNonNegative: true }).value).toBe(-3)
    const input = { ...sound, value: -3.1, isNonNegative: true }
    expect(() => requireConformityInput('f', input)).toThrow('f requires value from -3 where')
  })

  it.each([
    { ...sound, value: Number.NaN },
    { ...sound, standardUncertainty: -0.1 },
    { ...sound, standardUncertainty: Number.POSITIVE_INFINITY },
    { ...sound, upperLimit: Number.NaN },
    { ...sound, lowerLimit: Number.NEGATIVE_INFINITY },
    { ...sound, lowerLimit: 2 },
    { ...sound, lowerLimit: 3 },
    { value: 1, standardUncertainty: 0.1 },
    { ...sound, value: -1e-9, standardUncertainty: 0, isNonNegative: true },
  ])('refuses %o', (input) => {
    expect(() => requireConformityInput('f', input)).toThrow(RangeError)
  })
})
