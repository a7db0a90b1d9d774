import { describe, expect, it } from 'vitest'
import { cToTemperature } from '../../../src/science/units/c-to-temperature.ts'
import { temperatureToC } from '../../../src/science/units/temperature-to-c.ts'
import { temperatureUnits } from '../../../src/science/units/temperature-unit.ts'

describe('temperatureToC', () => {
  // Fixed pairs of the scales by definition.
  it.each([
    [32, 'F', 0],
    [212, 'F', 100],
    [-40, 'F', -40],
    [293.15, 'K', 20],
    [0, 'K', -273.15],
    [21, 'C', 21],
  ] as const)('turns %d %s into %d C', (value, unit, celsius) => {
    // Subtraction of 273.15 keeps about 13 decimals.
    expect(temperatureToC(value, unit)).toBeCloseTo(celsius, 12)
  })

  it('undoes cToTemperature in every unit', () => {
    for (const unit of temperatureUnits) {
      // Rounding of numbers near 300.
      expect(temperatureToC(cToTemperature(20.5, unit), unit)).toBeCloseTo(20.5, 12)
    }
  })

  it.each([
    [-0.001, 'K'],
    [-459.68, 'F'],
    [-273.16, 'C'],
    [Number.NaN, 'C'],
  ] as const)('refuses %d %s, which is no temperature', (value, unit) => {
    expect(() => temperatureToC(value, unit)).toThrow(RangeError)
  })
})
