import { describe, expect, it } from 'vitest'
import { kPaToPressure } from '../../../src/science/units/kpa-to-pressure.ts'

describe('kPaToPressure', () => {
  it('gives the standard atmosphere in psi as 14.696', () => {
    // Printed to five digits in the US standard state (14.696 psia).
    expect(kPaToPressure(101.325, 'psi')).toBeCloseTo(14.696, 3)
  })

  it('keeps a vacuum reading negative', () => {
    expect(kPaToPressure(-50, 'mbar')).toBeCloseTo(-500, 10) // definition, last digits only
  })

  it('refuses infinity', () => {
    expect(() => kPaToPressure(Number.POSITIVE_INFINITY, 'psi')).toThrow(RangeError)
  })
})
