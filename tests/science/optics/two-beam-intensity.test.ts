import { describe, expect, it } from 'vitest'
import { twoBeamIntensity } from '../../../src/science/optics/two-beam-intensity.ts'

describe('twoBeamIntensity', () => {
  it('is dark at contact and brightest a quarter wavelength of air away from it', () => {
    // Any optics text: the touching point of Newton's rings is dark in reflected light, and the
    // first bright ring lies where the gap is a quarter of the wavelength, half a band.
    expect(twoBeamIntensity(0)).toBe(0)
    expect(twoBeamIntensity(0.5)).toBe(1)
    expect(twoBeamIntensity(0.25)).toBeCloseTo(0.5, 12) // rounding of the cosine
  })

  it('is what two waves of equal strength add up to', () => {
    // Second route: |1 - e^(i phase)|^2 over the largest it can be, 4.
    for (let order = 0; order < 3; order += 0.07) {
      const phase = 2 * Math.PI * order
      const power = (1 - Math.cos(phase)) ** 2 + Math.sin(phase) ** 2
      expect(twoBeamIntensity(order)).toBeCloseTo(power / 4, 12) // rounding alone
    }
  })

  it('repeats from band to band and is the same to either side of one', () => {
    for (const part of [0.1, 0.33, 0.48]) {
      expect(twoBeamIntensity(7 + part)).toBeCloseTo(twoBeamIntensity(part), 12) // rounding alone
      expect(twoBeamIntensity(7 - part)).toBeCloseTo(twoBeamIntensity(part), 12)
    }
  })

  it('refuses what is no order', () => {
    expect(() => twoBeamIntensity(Number.NaN)).toThrow(RangeError)
    expect(() => twoBeamIntensity(Number.POSITIVE_INFINITY)).toThrow(RangeError)
  })
})
