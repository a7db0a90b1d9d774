import { describe, expect, it } from 'vitest'
import { convertBands } from '../../src/domain/band-conversion.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

describe('convertBands', () => {
  it('takes what is absent as helium, bands, no value and straight above', () => {
    const conversion = accepted(convertBands({}))
    expect(conversion).toMatchObject({ lampId: 'helium', quantity: 'bands', answer: null })
    expect(conversion.table.map((row) => row.bands)).toEqual([1, 2, 3, 5, 9])
  })

  it('gives the published band of each lamp', () => {
    // Half the wavelength in air: helium 587.5618 nm, mercury green 546.074 nm. Six digits, as
    // the wavelengths have at least as many.
    expect(accepted(convertBands({})).bandHeightUm).toBeCloseTo(0.2937809, 7)
    expect(accepted(convertBands({ lamp: 'mercury-green' })).bandHeightUm).toBeCloseTo(0.273037, 6)
  })

  it('comes back to where it started, whichever of the three was asked', () => {
    const um = accepted(convertBands({ value: '3', viewingAngleDeg: '20' })).answer?.um
    const back = accepted(
      convertBands({ quantity: 'um', value: String(um), viewingAngleDeg: '20' }),
    ).answer
    // One multiplication and one division: a few units in the last place.
    expect(back?.bands).toBeCloseTo(3, 12)
    // A training text's limit of 34.8 µin is 3.009 helium bands.
    const uin = accepted(convertBands({ quantity: 'uin', value: '34.8' })).answer
    expect(uin?.bands).toBeCloseTo(3.009, 3)
    expect(uin?.uin).toBe(34.8)
  })

  it('refuses what it cannot read', () => {
    expect(faultsOf(convertBands({ value: 'x' }))).toEqual(['value not-a-number'])
    expect(faultsOf(convertBands({ quantity: 'um', value: '1001' }))).toEqual(['value above'])
    expect(faultsOf(convertBands({ viewingAngleDeg: '81' }))).toEqual(['viewingAngleDeg above'])
    expect(faultsOf(convertBands({ lamp: 'candle' }))).toEqual(['lamp not-a-choice'])
  })
})
