import { describe, expect, it } from 'vitest'
import { uinToUm } from '../../../src/science/units/uin-to-um.ts'
import { umToUin } from '../../../src/science/units/um-to-uin.ts'

describe('uinToUm', () => {
  // Nominal trade pairs of finish: 32 uin = 0.8 um, 63 = 1.6, 125 = 3.2 (installation leaflet).
  it.each([
    [32, 0.8],
    [63, 1.6],
    [125, 3.2],
  ])('turns %d uin into about %d um', (uin, um) => {
    // The pairs are rounded to one decimal.
    expect(uinToUm(uin)).toBeCloseTo(um, 1)
  })

  it('undoes umToUin', () => {
    for (const um of [0.001, 0.2938, 17, -3]) {
      // One multiplication and one division: two roundings.
      expect(Math.abs(uinToUm(umToUin(um)) / um - 1)).toBeLessThan(4e-16)
    }
  })

  it('refuses infinity', () => {
    expect(() => uinToUm(Number.POSITIVE_INFINITY)).toThrow(RangeError)
  })
})
