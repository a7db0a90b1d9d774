import { describe, expect, it } from 'vitest'
import { bandsToHeightUm } from '../../../src/science/optics/bands-to-height-um.ts'
import { lamps } from '../../../src/science/optics/lamps.ts'
import { umToUin } from '../../../src/science/units/um-to-uin.ts'
import { readReference } from '../read-reference.ts'

interface Worked {
  nineHeliumBands: {
    bands: number
    roundedBandUin: number
    printedUin: number
    exactUin: number
    exactUm: number
  }
  sodiumTable: { rows: { bands: number; printedMm: number; exactMm: number }[] }
  threeBandsOblique: { bands: number; angleDeg: number; straightUm: number; obliqueUm: number }
}
const worked = readReference<Worked>('optics/worked-bands.json')
const helium = lamps.helium.wavelengthNm

describe('bandsToHeightUm', () => {
  it('gives nine helium bands as the army lesson does, within its rounded band', () => {
    const { bands, roundedBandUin, printedUin, exactUin, exactUm } = worked.nineHeliumBands
    expect(bands * roundedBandUin).toBeCloseTo(printedUin, 10)
    const heightUm = bandsToHeightUm({ bands, wavelengthNm: helium })
    expect(heightUm).toBeCloseTo(exactUm, 3) // printed to 0.001 um
    expect(umToUin(heightUm)).toBeCloseTo(exactUin, 2) // printed to 0.01 uin
    // 11.6 uin a band is sodium's; under helium it is 0.3 % high.
    expect(printedUin / umToUin(heightUm) - 1).toBeCloseTo(0.003, 3)
  })

  it.each(worked.sodiumTable.rows)(
    'gives $bands sodium bands as the lapping table does, within its rounding',
    (row) => {
      const heightMm =
        bandsToHeightUm({ bands: row.bands, wavelengthNm: lamps.sodium.wavelengthNm }) / 1000
      expect(Math.abs(heightMm - row.exactMm)).toBeLessThan(5.1e-7) // printed to 1e-6 mm
      // The table counts 0.29 um a band instead of 0.29465: 1.6 % low.
      expect(row.printedMm / heightMm).toBeCloseTo(0.984, 3)
    },
  )

  it('gives three helium bands seen square and at 30 degrees', () => {
    const { bands, angleDeg, straightUm, obliqueUm } = worked.threeBandsOblique
    // printed digits
    expect(bandsToHeightUm({ bands, wavelengthNm: helium })).toBeCloseTo(straightUm, 4)
    expect(bandsToHeightUm({ bands, wavelengthNm: helium, viewingAngleDeg: angleDeg })).toBeCloseTo(
      obliqueUm,
      4,
    )
  })

  it('agrees with counting the maxima of the interference formula', () => {
    // Second route: intensity 1 - cos(4 pi d cos(q) / wavelength) along a gap from 0 to 3 um.
    const wavelengthUm = helium / 1000
    const angle = Math.PI / 9
    let maxima = 0
    let lastMaximumUm = 0
    const step = 1e-5
    const at = (d: number) => 1 - Math.cos((4 * Math.PI * d * Math.cos(angle)) / wavelengthUm)
    for (let d = step; d < 3; d += step) {
      if (at(d) > at(d - step) && at(d) >= at(d + step)) {
        maxima++
        lastMaximumUm = d
      }
    }
    // The n-th maximum lies n - 1/2 bands up; the sampling step is the tolerance.
    expect(maxima).toBe(10)
    expect(
      Math.abs(
        bandsToHeightUm({ bands: maxima - 0.5, wavelengthNm: helium, viewingAngleDeg: 20 }) -
          lastMaximumUm,
      ),
    ).toBeLessThan(2 * step)
  })

  it('gives zero for zero bands and scales with the count', () => {
    expect(bandsToHeightUm({ bands: 0, wavelengthNm: helium })).toBe(0)
    expect(bandsToHeightUm({ bands: 4, wavelengthNm: helium })).toBe(
      2 * bandsToHeightUm({ bands: 2, wavelengthNm: helium }),
    )
  })

  it.each([-0.25, 1001, Number.NaN])('refuses %d bands', (bands) => {
    expect(() => bandsToHeightUm({ bands, wavelengthNm: helium })).toThrow(
      `bandsToHeightUm requires bands from 0 to 1000, got ${bands}`,
    )
  })
})
