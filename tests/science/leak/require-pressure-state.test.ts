import { describe, expect, it } from 'vitest'
import { requirePressureState } from '../../../src/science/leak/require-pressure-state.ts'

const state = { timeS: 0, pressureKPaAbs: 271.325, temperatureC: 21 }

describe('requirePressureState', () => {
  it('gives a possible state back', () => {
    expect(requirePressureState('f', state)).toBe(state)
    expect(requirePressureState('f', { ...state, pressureKPaAbs: 0 }).pressureKPaAbs).toBe(0)
  })

  it.each([
    { timeS: Number.NaN },
    { pressureKPaAbs: -0.001 },
    { pressureKPaAbs: 1e6 + 1 },
    { temperatureC: -273.15 },
    { temperatureC: 2001 },
  ])('refuses %o', (wrong) => {
    expect(() => requirePressureState('twoPointLeak', { ...state, ...wrong })).toThrow(
      /^twoPointLeak requires /,
    )
  })
})
