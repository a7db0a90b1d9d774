import { describe, expect, it } from 'vitest'
import { kPaToPressure } from '../../../src/science/units/kpa-to-pressure.ts'
import { pressureToKPa } from '../../../src/science/units/pressure-to-kpa.ts'
import { pressureUnits } from '../../../src/science/units/pressure-unit.ts'

describe('pressureToKPa', () => {
  // By definition: SI Brochure and 10th CGPM 1954.
  it.each([
    [1, 'bar', 100],
    [1, 'mbar', 0.1],
    [1, 'MPa', 1000],
    [1000, 'Pa', 1],
    [1, 'atm', 101.325],
    [760, 'Torr', 101.325],
  ] as const)('turns %d %s into %d kPa', (value, unit, kPa) => {
    // One multiplication and division: a few units of the last digit.
    expect(pressureToKPa(value, unit)).toBeCloseTo(kPa, 12)
  })

  it.each([
    // API 682 clause 10.3.4.2 as quoted: 0.17 MPa = 25 psi, 0.014 MPa = 2 psi, rounded there.
    [25, 170, 3],
    [2, 14, 0.25],
  ])('turns %d psi into the %d kPa that the assembly test prints', (psi, kPa, printedRounding) => {
    expect(Math.abs(pressureToKPa(psi, 'psi') - kPa)).toBeLessThan(printedRounding)
  })

  it('undoes kPaToPressure in every unit', () => {
    for (const unit of pressureUnits) {
      // Four roundings.
      expect(
        Math.abs(pressureToKPa(kPaToPressure(271.325, unit), unit) / 271.325 - 1),
      ).toBeLessThan(1e-15)
    }
  })

  it('refuses what is not a number', () => {
    expect(() => pressureToKPa(Number.NaN, 'bar')).toThrow(RangeError)
  })
})
