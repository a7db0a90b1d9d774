import { describe, expect, it } from 'vitest'
import { umToUin } from '../../../src/science/units/um-to-uin.ts'

describe('umToUin', () => {
  // International yard and pound agreement, 1959: 1 in = 25.4 mm exactly.
  it('gives exactly 1 uin for 0.0254 um and keeps the sign', () => {
    expect(umToUin(0.0254)).toBe(1)
    expect(umToUin(-0.0508)).toBe(-2)
  })

  it('gives the trade figure of 39.37 uin for 1 um', () => {
    // Printed to four digits: 1 um = 39.37 uin (seal installation leaflet).
    expect(umToUin(1)).toBeCloseTo(39.37, 2)
  })

  it('refuses what is not a number', () => {
    expect(() => umToUin(Number.NaN)).toThrow(RangeError)
  })
})
