import { describe, expect, it } from 'vitest'
import { bandsToHeightUm } from '../../../src/science/optics/bands-to-height-um.ts'
import { bowOverSpacingBands } from '../../../src/science/optics/bow-over-spacing-bands.ts'
import { lamps } from '../../../src/science/optics/lamps.ts'
import { umToUin } from '../../../src/science/units/um-to-uin.ts'
import { readReference } from '../read-reference.ts'

const { bowOverSpacing: worked } = readReference<{
  bowOverSpacing: { bowMm: number; spacingMm: number; bands: number; um: number; uin: number }
}>('optics/worked-bands.json')

describe('bowOverSpacingBands', () => {
  it('gives the worked bow of 4.5 mm over 6 mm in bands, um and uin', () => {
    const bands = bowOverSpacingBands(worked)
    expect(bands).toBe(worked.bands)
    const heightUm = bandsToHeightUm({ bands, wavelengthNm: lamps.helium.wavelengthNm })
    expect(heightUm).toBeCloseTo(worked.um, 4) // printed digits
    expect(umToUin(heightUm)).toBeCloseTo(worked.uin, 2) // printed to 0.001, rounded from 8.6744
  })

  it('finds the bow of a sphere under a wedge', () => {
    // Second route: gap = wedge x - height, height c (x^2 + y^2) with a height of 0.5 band over the
    // half width 1; the band through x = 1 bows by 0.5 / wedge slope, spacing 1 / slope.
    const slope = 8
    const bow = 0.5 / slope
    expect(bowOverSpacingBands({ bowMm: bow, spacingMm: 1 / slope })).toBeCloseTo(0.5, 14)
  })

  it('does not change when the picture is enlarged', () => {
    expect(bowOverSpacingBands({ bowMm: 9, spacingMm: 12 })).toBe(
      bowOverSpacingBands({ bowMm: 4.5, spacingMm: 6 }),
    )
  })

  it.each([
    { bowMm: -1, spacingMm: 6 },
    { bowMm: 1, spacingMm: 0 },
    { bowMm: Number.NaN, spacingMm: 6 },
    { bowMm: 1, spacingMm: 1001 },
  ])('refuses %o', (input) => {
    expect(() => bowOverSpacingBands(input)).toThrow(RangeError)
  })
})
