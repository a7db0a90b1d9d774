import { describe, expect, it } from 'vitest'
import { throughputUnits } from '../../../src/science/units/throughput-units.ts'
import { readReference } from '../read-reference.ts'

interface Leaks {
  conversions: {
    perPaM3PerS: { mlPerMin: number; sccm0CAt20C: number }
    sccm0CPaM3PerSAt0C: number
    sccm0CPaM3PerSAt20C: number
    sccm0CMolPerS: number
  }
}
interface DecayCase {
  id: string
  kind: string
  input: { Q: number; Tgas: number }
  expect: number
}

const { conversions } = readReference<Leaks>('leak/worked-leaks.json')
const cases = readReference<DecayCase[]>('leak/decay-cases.json').filter(
  (c) => c.kind === 'paM3toSccm',
)

describe('throughputUnits', () => {
  it('gives 1 Pa m3/s at 20 C in the units of the trade', () => {
    const units = throughputUnits({ leakPaM3PerS: 1, referenceTemperatureC: 20 })
    // Printed to two decimals.
    expect(units.leakMlPerMin).toBeCloseTo(conversions.perPaM3PerS.mlPerMin, 2)
    expect(units.leakSccm0C).toBeCloseTo(conversions.perPaM3PerS.sccm0CAt20C, 2)
    expect(units.leakMbarLPerS).toBe(10)
    expect(units.leakPaM3PerS).toBe(1)
  })

  it('gives 1 sccm (0 C) for the throughputs printed for gas at 0 C and at 20 C', () => {
    const at0 = throughputUnits({
      leakPaM3PerS: conversions.sccm0CPaM3PerSAt0C,
      referenceTemperatureC: 0,
    })
    const at20 = throughputUnits({
      leakPaM3PerS: conversions.sccm0CPaM3PerSAt20C,
      referenceTemperatureC: 20,
    })
    expect(at0.leakSccm0C).toBeCloseTo(1, 12) // the factor is exact
    expect(at20.leakSccm0C).toBeCloseTo(1, 4) // printed to five digits
    expect(at0.leakMolPerS).toBeCloseTo(conversions.sccm0CMolPerS, 10) // printed to five digits
  })

  it('reproduces the sccm cases computed with 30 digits', () => {
    expect(cases.length).toBe(2)
    for (const { input, expect: sccm } of cases) {
      const units = throughputUnits({
        leakPaM3PerS: input.Q,
        referenceTemperatureC: input.Tgas - 273.15,
      })
      expect(Math.abs(units.leakSccm0C / sccm - 1)).toBeLessThan(1e-12) // rounding only
    }
  })

  // Molar volumes at 101.325 kPa, L/mol: own arithmetic, rounded to three decimals.
  it.each([
    [0, 22.414],
    [15, 23.645],
    [20, 24.055],
  ])('agrees with the molar volume at %d C', (referenceTemperatureC, litresPerMol) => {
    const units = throughputUnits({ leakPaM3PerS: 1, referenceTemperatureC })
    expect(units.leakMlPerMin / 60_000 / units.leakMolPerS).toBeCloseTo(litresPerMol, 3)
  })

  it('scales with the leak and keeps its sign', () => {
    const one = throughputUnits({ leakPaM3PerS: 0.02, referenceTemperatureC: 25 })
    const minusThree = throughputUnits({ leakPaM3PerS: -0.06, referenceTemperatureC: 25 })
    expect(minusThree.leakSccm0C / one.leakSccm0C).toBeCloseTo(-3, 12) // rounding only
  })

  it.each([
    { leakPaM3PerS: Number.NaN, referenceTemperatureC: 20 },
    { leakPaM3PerS: 1, referenceTemperatureC: -273.15 },
    { leakPaM3PerS: 1, referenceTemperatureC: 2001 },
  ])('refuses %o', (input) => {
    expect(() => throughputUnits(input)).toThrow(RangeError)
  })
})
