import { describe, expect, it } from 'vitest'
import { lampIds, lamps } from '../../../src/science/optics/lamps.ts'
import { readReferenceText } from '../read-reference.ts'

/** Wavelengths in air by line, from the NIST Atomic Spectra Database. */
const airNm = new Map(
  readReferenceText('optics/spectral-lines.csv')
    .trim()
    .split('\n')
    .slice(1)
    .map((row) => {
      const columns = row.split(/,(?=\d)/)
      return [columns[0] ?? '', Number(columns[2])] as const
    }),
)

describe('lamps', () => {
  it('lists exactly the lamps that have a wavelength', () => {
    expect(Object.keys(lamps).sort()).toEqual([...lampIds].sort())
    expect(lampIds.length).toBe(13)
  })

  it.each([
    // Table and database are two sources and differ by up to 0.001 nm, 2e-6 of the wavelength.
    ['helium', 'He I 587.6 (d), multiplet strongest', 0.0005],
    ['mercury-green', 'Hg I 546.1 (e)', 0.0012],
    ['mercury-blue', 'Hg I 435.8 (g)', 0.0008],
    ['cadmium-red', 'Cd I 643.8', 0.0002],
    // From memory, three decimals.
    ['sodium-d1', 'Na I D1', 0.0006],
    ['sodium-d2', 'Na I D2', 0.0006],
    // Printed to one decimal.
    ['helium-neon-red', 'Ne I 632.8 (HeNe laser line)', 0.05],
  ] as const)('agrees with the NIST line for %s', (lamp, line, toleranceNm) => {
    const expected = airNm.get(line)
    expect(expected).toBeDefined()
    expect(Math.abs(lamps[lamp].wavelengthNm - (expected ?? Number.NaN))).toBeLessThan(toleranceNm)
  })

  it('keeps the sodium mean between its two lines', () => {
    expect(lamps.sodium.wavelengthNm).toBeCloseTo(
      (lamps['sodium-d1'].wavelengthNm + lamps['sodium-d2'].wavelengthNm) / 2,
      3, // the lines are given to three decimals
    )
  })

  it('says how sure every wavelength is, and calls no nominal LED published', () => {
    for (const id of lampIds) {
      expect(lamps[id].source.length).toBeGreaterThan(10)
      if (id.startsWith('green-led')) expect(lamps[id].basis).toBe('common practice, no source')
    }
    expect(lamps.helium.basis).toBe('published')
    expect(lamps['sodium-d1'].basis).toBe('from memory')
  })

  it('takes in what sources differ by, and says how sure each half width is', () => {
    const lines = [
      ['helium', 'He I 587.6 (d), multiplet strongest'],
      ['mercury-green', 'Hg I 546.1 (e)'],
      ['mercury-blue', 'Hg I 435.8 (g)'],
      ['cadmium-red', 'Cd I 643.8'],
      ['helium-neon-red', 'Ne I 632.8 (HeNe laser line)'],
    ] as const
    for (const [id, line] of lines) {
      const apart = Math.abs(lamps[id].wavelengthNm - (airNm.get(line) ?? Number.NaN))
      expect(apart, id).toBeLessThan(lamps[id].halfWidthNm)
    }
    for (const id of lampIds) {
      const basis = id === 'sodium' ? 'own derivation' : 'common practice, no source'
      expect(lamps[id].halfWidthBasis, id).toBe(basis)
    }
  })

  it('takes in both D lines of sodium around their mean, and no more', () => {
    const { sodium, 'sodium-d1': d1, 'sodium-d2': d2 } = lamps
    // Half the distance of the lines, 0.2985 nm, to a tenth.
    expect(sodium.halfWidthNm).toBeCloseTo((d1.wavelengthNm - d2.wavelengthNm) / 2, 1)
    for (const { wavelengthNm } of [d1, d2]) {
      expect(Math.abs(wavelengthNm - sodium.wavelengthNm)).toBeLessThan(sodium.halfWidthNm)
    }
  })

  it('knows a line better than a diode, and a diode better than white light', () => {
    expect(lamps.helium.halfWidthNm).toBeLessThan(lamps['green-led-525'].halfWidthNm)
    expect(lamps['green-led-525'].halfWidthNm).toBeLessThan(lamps.white.halfWidthNm)
  })
})
