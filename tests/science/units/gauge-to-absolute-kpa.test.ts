import { describe, expect, it } from 'vitest'
import { gaugeToAbsoluteKPa } from '../../../src/science/units/gauge-to-absolute-kpa.ts'

describe('gaugeToAbsoluteKPa', () => {
  it('adds the barometer to the gauge', () => {
    // 1.7 bar gauge at the standard atmosphere: 271.325 kPa absolute (own arithmetic).
    expect(gaugeToAbsoluteKPa({ gaugeKPa: 170, barometerKPa: 101.325 })).toBe(271.325)
  })

  it('gives zero for a full vacuum', () => {
    expect(gaugeToAbsoluteKPa({ gaugeKPa: -98, barometerKPa: 98 })).toBe(0)
  })

  it('refuses a vacuum deeper than the barometer', () => {
    expect(() => gaugeToAbsoluteKPa({ gaugeKPa: -98.1, barometerKPa: 98 })).toThrow(
      'gaugeToAbsoluteKPa requires gaugeKPa from -98 to 1000000, got -98.1',
    )
  })

  it.each([29, 121, Number.NaN])('refuses a barometer of %d kPa', (barometerKPa) => {
    expect(() => gaugeToAbsoluteKPa({ gaugeKPa: 0, barometerKPa })).toThrow(RangeError)
  })
})
