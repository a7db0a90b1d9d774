import { describe, expect, it } from 'vitest'
import { cToTemperature } from '../../../src/science/units/c-to-temperature.ts'

describe('cToTemperature', () => {
  // Reference temperatures of the gas trade: 15 C = 59 F, 20 C = 68 F = 293.15 K (definitions).
  it.each([
    [15, 'F', 59],
    [20, 'F', 68],
    [20, 'K', 293.15],
    [20, 'C', 20],
  ] as const)('turns %d C into %s %d', (celsius, unit, value) => {
    expect(cToTemperature(celsius, unit)).toBeCloseTo(value, 12) // last digits only
  })

  it.each([-273.16, Number.NaN])('refuses %d', (value) => {
    expect(() => cToTemperature(value, 'K')).toThrow(RangeError)
  })
})
