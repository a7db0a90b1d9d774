import { describe, expect, it } from 'vitest'
import { compensatedPressuresKPa } from '../../../src/science/leak/compensated-pressures-kpa.ts'

const times = [0, 60, 120, 180, 240, 300]

describe('compensatedPressuresKPa', () => {
  it('makes a sealed volume that warms up constant', () => {
    // Second route: n moles kept, p = n R T / V.
    const trace = times.map((timeS) => {
      const temperatureC = 20 + timeS / 100
      return { timeS, pressureKPaAbs: (300 * (temperatureC + 273.15)) / 293.15, temperatureC }
    })
    for (const value of compensatedPressuresKPa({ trace, referenceTemperatureC: 20 })) {
      expect(value).toBeCloseTo(300, 11) // rounding of 300
    }
  })

  it('takes 0.926 kPa for each kelvin at 271.3 kPa', () => {
    // 1.7 bar gauge: own arithmetic, printed to three digits.
    const trace = times.map((timeS, i) => ({
      timeS,
      pressureKPaAbs: 271.325,
      temperatureC: i === 0 ? 20 : 21,
    }))
    const [first = 0, second = 0] = compensatedPressuresKPa({ trace, referenceTemperatureC: 20 })
    // The slope at 20 C is 0.9255; over a whole kelvin 0.3 % less.
    expect(first - second).toBeCloseTo(0.926, 2)
  })

  it('leaves pressures alone when no temperatures were taken', () => {
    const trace = times.map((timeS) => ({ timeS, pressureKPaAbs: 300 - timeS / 1000 }))
    expect(compensatedPressuresKPa({ trace, referenceTemperatureC: 35 })).toEqual(
      trace.map((s) => s.pressureKPaAbs),
    )
  })

  it('refuses an impossible reference temperature or trace', () => {
    const trace = times.map((timeS) => ({ timeS, pressureKPaAbs: 300 }))
    expect(() => compensatedPressuresKPa({ trace, referenceTemperatureC: -273.15 })).toThrow(
      RangeError,
    )
    expect(() => compensatedPressuresKPa({ trace: [], referenceTemperatureC: 20 })).toThrow(
      RangeError,
    )
  })
})
