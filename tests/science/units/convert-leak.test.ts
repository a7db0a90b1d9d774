import { describe, expect, it } from 'vitest'
import { convertLeak } from '../../../src/science/units/convert-leak.ts'
import { type LeakUnit, leakUnits } from '../../../src/science/units/leak-unit.ts'
import { throughputUnits } from '../../../src/science/units/throughput-units.ts'

const convert = (value: number, from: LeakUnit, to: LeakUnit, referenceTemperatureC = 20) =>
  convertLeak({ value, from, to, referenceTemperatureC })

describe('a leak in another unit', () => {
  // Printed table of the facts (4.4), to its last digit.
  it.each([
    [1, 'Pa-m3-per-s', 'mbar-L-per-s', 10, 9],
    [1, 'Pa-m3-per-s', 'atm-cm3-per-s', 9.869, 3],
    [1, 'Pa-m3-per-s', 'Torr-L-per-s', 7.501, 3],
    [1, 'Pa-m3-per-s', 'mL-per-min', 592.15, 2],
    [1, 'Pa-m3-per-s', 'sccm-0C', 551.75, 2],
    [1, 'mbar-L-per-s', 'sccm-0C', 55.175, 3],
    [1, 'atm-cm3-per-s', 'mL-per-min', 60, 9],
    [1, 'atm-cm3-per-s', 'sccm-0C', 55.906, 2],
    [1, 'sccm-0C', 'Pa-m3-per-s', 0.0018124, 7],
    [1, 'sccm-0C', 'mbar-L-per-s', 0.018124, 6],
    [1, 'sccm-0C', 'Torr-L-per-s', 0.013594, 6],
    [1, 'sccm-0C', 'mL-per-min', 1.0732, 4],
    [1, 'sccm-0C', 'mol-per-s', 7.4358e-7, 11],
    [1, 'ft3-per-h', 'mL-per-min', 471.95, 2],
  ] as const)('%s %s are %s: %s', (value, from, to, expected, digits) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, digits)
  })

  it('agrees with the factors of the checks', () => {
    // sccm-1 and sccm-2 of the verified values.
    expect(convert(1, 'Pa-m3-per-s', 'sccm-0C', 0)).toBeCloseTo(592.1539600296077, 9)
    expect(convert(0.001, 'Pa-m3-per-s', 'sccm-0C', 20)).toBeCloseTo(0.5517545767766924, 12)
  })

  it('agrees with what a pressure change prints', () => {
    for (const referenceTemperatureC of [0, 20, 37]) {
      const told = throughputUnits({ leakPaM3PerS: 0.0123, referenceTemperatureC })
      const to = (unit: LeakUnit) => convert(0.0123, 'Pa-m3-per-s', unit, referenceTemperatureC)
      expect(to('mol-per-s') / told.leakMolPerS).toBeCloseTo(1, 12)
      expect(to('mbar-L-per-s') / told.leakMbarLPerS).toBeCloseTo(1, 12)
      expect(to('sccm-0C') / told.leakSccm0C).toBeCloseTo(1, 12)
      expect(to('mL-per-min') / told.leakMlPerMin).toBeCloseTo(1, 12)
    }
  })

  it('comes back from every unit, keeps its sign, and takes 7.3 % from an unnamed state', () => {
    for (const from of leakUnits) {
      for (const to of leakUnits)
        expect(convert(convert(-2.5, from, to), to, from)).toBeCloseTo(-2.5, 9)
    }
    expect(convert(1, 'sccm-20C', 'sccm-0C') - 1).toBeCloseTo(273.15 / 293.15 - 1, 12)
    // Molar volumes of the facts: 22.414 L at 0 C, 24.055 at 20 C, 23.690 at 60 F, 24.146 at 70 F.
    for (const [unit, litres] of [
      ['sccm-0C', 22.414],
      ['sccm-15C', 23.645],
      ['sccm-20C', 24.055],
      ['sccm-60F', 23.69],
      ['sccm-70F', 24.146],
    ] as const) {
      expect(convert(1, 'mol-per-s', unit) / 60_000).toBeCloseTo(litres, 3)
    }
    expect(convert(1, 'mol-per-s', 'g-per-h-air')).toBeCloseTo(28.96 * 3600, 6)
  })

  it('refuses what is no number and a temperature below cold', () => {
    expect(() => convert(Number.NaN, 'mol-per-s', 'sccm-0C')).toThrow('value')
    expect(() => convert(1, 'mol-per-s', 'sccm-0C', -300)).toThrow('referenceTemperatureC')
  })
})
