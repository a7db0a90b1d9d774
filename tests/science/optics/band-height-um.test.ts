import { describe, expect, it } from 'vitest'
import { bandHeightUm } from '../../../src/science/optics/band-height-um.ts'
import { lampIds, lamps } from '../../../src/science/optics/lamps.ts'
import { readReference } from '../read-reference.ts'

interface Worked {
  bandHeights: {
    lamp: keyof typeof lamps
    wavelengthNm: number
    bandNm: number
    bandUin: number
    threeBandsUm: number
  }[]
  obliquity: { rows: { angleDeg: number; factor: number; heliumBandNm: number }[] }
}
const worked = readReference<Worked>('optics/worked-bands.json')

describe('bandHeightUm', () => {
  it('covers every lamp but white in the worked table', () => {
    expect(worked.bandHeights.map((row) => row.lamp).sort()).toEqual(
      lampIds.filter((id) => id !== 'white').sort(),
    )
  })

  it.each(worked.bandHeights)('gives half the wavelength for $lamp', (row) => {
    const height = bandHeightUm({ wavelengthNm: lamps[row.lamp].wavelengthNm })
    expect(lamps[row.lamp].wavelengthNm).toBe(row.wavelengthNm)
    expect(Math.abs(height * 1000 - row.bandNm)).toBeLessThan(0.00051) // printed to 0.001 nm
    expect(Math.abs(height / 0.0254 - row.bandUin)).toBeLessThan(0.00051) // printed to 0.001 uin
    expect(Math.abs(3 * height - row.threeBandsUm)).toBeLessThan(0.00051) // printed to 0.001 um
  })

  it('gives white light about 0.27 um a band', () => {
    // Encyclopedia article on the plane test glass, printed to two digits.
    expect(bandHeightUm({ wavelengthNm: lamps.white.wavelengthNm })).toBeCloseTo(0.27, 2)
  })

  it.each(worked.obliquity.rows)('grows by the factor for a view at $angleDeg degrees', (row) => {
    const { wavelengthNm } = lamps.helium
    const straight = bandHeightUm({ wavelengthNm })
    const oblique = bandHeightUm({ wavelengthNm, viewingAngleDeg: row.angleDeg })
    // printed to four decimals
    expect(Math.abs(oblique / straight - row.factor)).toBeLessThan(0.000051)
    expect(Math.abs(oblique * 1000 - row.heliumBandNm)).toBeLessThan(0.051) // printed to 0.1 nm
  })

  it('is off by about 15 percent at 30 degrees, as an engineering-metrology exam states', () => {
    const ratio = bandHeightUm({ wavelengthNm: 600, viewingAngleDeg: 30 }) / 0.3
    expect(Math.round((ratio - 1) * 100)).toBe(15)
  })

  it('scales with the wavelength and rises with the angle', () => {
    // Twice the wavelength is twice the height: exact in binary.
    expect(bandHeightUm({ wavelengthNm: 1000, viewingAngleDeg: 17 })).toBe(
      2 * bandHeightUm({ wavelengthNm: 500, viewingAngleDeg: 17 }),
    )
    let before = 0
    for (let viewingAngleDeg = 0; viewingAngleDeg <= 80; viewingAngleDeg++) {
      const height = bandHeightUm({ wavelengthNm: 587.5618, viewingAngleDeg })
      expect(height).toBeGreaterThan(before)
      before = height
    }
  })

  it.each([
    { wavelengthNm: 199 },
    { wavelengthNm: 2001 },
    { wavelengthNm: Number.NaN },
    { wavelengthNm: 588, viewingAngleDeg: -1 },
    { wavelengthNm: 588, viewingAngleDeg: 80.1 },
  ])('refuses %o', (input) => {
    expect(() => bandHeightUm(input)).toThrow(/^bandHeightUm requires \w+ from \d+ to \d+, got /)
  })
})
