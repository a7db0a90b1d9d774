import { describe, expect, it } from 'vitest'
import { bandsToHeightUm } from '../../../src/science/optics/bands-to-height-um.ts'
import { heightToBands } from '../../../src/science/optics/height-to-bands.ts'
import { type LampId, lampIds, lamps } from '../../../src/science/optics/lamps.ts'
import { uinToUm } from '../../../src/science/units/uin-to-um.ts'
import { readReference } from '../read-reference.ts'

interface Worked {
  threeBandLimit: { limitUin: number; heliumBands: number; um: number }
  sameFace: { heightUm: number; bands: Partial<Record<LampId, number>> }
}
const worked = readReference<Worked>('optics/worked-bands.json')

describe('heightToBands', () => {
  it('gives the leaflet limit of 34.8 millionths of an inch as three helium bands', () => {
    const { limitUin, heliumBands, um } = worked.threeBandLimit
    const heightUm = uinToUm(limitUin)
    expect(heightUm).toBeCloseTo(um, 4) // printed digits
    expect(heightToBands({ heightUm, wavelengthNm: lamps.helium.wavelengthNm })).toBeCloseTo(
      heliumBands,
      3,
    )
  })

  it('gives one face other counts under other lamps', () => {
    const rows = Object.entries(worked.sameFace.bands)
    expect(rows.length).toBe(5)
    for (const [lamp, bands] of rows) {
      const { wavelengthNm } = lamps[lamp as LampId]
      // Printed to two decimals.
      expect(
        Math.abs(heightToBands({ heightUm: worked.sameFace.heightUm, wavelengthNm }) - bands),
      ).toBeLessThan(0.0051)
    }
  })

  it('undoes bandsToHeightUm for every lamp and angle', () => {
    for (const lamp of lampIds) {
      for (const viewingAngleDeg of [0, 12, 80]) {
        const view = { wavelengthNm: lamps[lamp].wavelengthNm, viewingAngleDeg }
        const bands = heightToBands({
          heightUm: bandsToHeightUm({ bands: 2.75, ...view }),
          ...view,
        })
        expect(bands).toBeCloseTo(2.75, 13) // two roundings
      }
    }
  })

  it.each([-0.01, 1001, Number.NaN])('refuses a height of %d um', (heightUm) => {
    expect(() => heightToBands({ heightUm, wavelengthNm: 588 })).toThrow(RangeError)
  })
})
