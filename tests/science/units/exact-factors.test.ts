import { describe, expect, it } from 'vitest'
import { exactFactors } from '../../../src/science/units/exact-factors.ts'
import { pascalsPerUnit, pressureUnits } from '../../../src/science/units/pressure-unit.ts'

describe('exactFactors', () => {
  it('carries value, unit, no uncertainty and a source for every factor', () => {
    const factors = Object.values(exactFactors)
    expect(factors.length).toBeGreaterThan(5)
    for (const factor of factors) {
      expect(factor.value).toBeGreaterThan(0)
      expect(factor.standardUncertainty).toBe(0)
      expect(factor.unit).not.toBe('')
      expect(factor.source.length).toBeGreaterThan(10)
    }
  })

  it('builds the molar gas constant from Boltzmann and Avogadro', () => {
    // 26th CGPM 2018: both exact. The product rounds in the last digit of a double.
    expect(exactFactors.molarGasConstant.value).toBeCloseTo(1.380649e-23 * 6.02214076e23, 13)
  })

  it('gives a pound on a square inch as 6894.757293 Pa', () => {
    // NIST SP 811 prints 6.894757e3; more digits by definition.
    expect(exactFactors.psi.value).toBeCloseTo(6894.757293168, 8)
  })

  it('knows a factor for every pressure unit offered', () => {
    expect(Object.keys(pascalsPerUnit).sort()).toEqual([...pressureUnits].sort())
  })
})
