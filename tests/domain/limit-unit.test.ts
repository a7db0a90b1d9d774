import { describe, expect, test } from 'vitest'
import { characteristics } from '../../src/domain/characteristic.ts'
import { limitEntry } from '../../src/domain/limit-entry.ts'
import { type LimitUnit, limitUnitMeaning, limitUnits } from '../../src/domain/limit-unit.ts'
import { limitBounds, limitUnitsOf, storedLimitUnit } from '../../src/domain/limit-units-of.ts'
import { typedLimit } from '../../src/domain/typed-limit.ts'

const stored = (value: number, unit: LimitUnit) => limitUnitMeaning[unit].toStored(value)

describe('what a unit means', () => {
  test('bands by the wavelength of their lamp', () => {
    // Half the wavelength in air (optics encyclopedia, table of spectral lines), to its digits.
    expect(stored(3, 'helium-bands')).toBeCloseTo(0.8813427, 7)
    expect(stored(1, 'sodium-bands')).toBeCloseTo(0.2946469, 7)
    expect(stored(1, 'mercury-green-bands')).toBeCloseTo(0.273037, 7)
    expect(stored(1, 'helium-neon-red-bands')).toBeCloseTo(0.3164, 7)
    // Three bands = 34.8 µin, as installation leaflets print it: right for sodium, to its digit.
    expect(limitUnitMeaning.uin.fromStored(stored(3, 'sodium-bands'))).toBeCloseTo(34.8, 1)
  })

  test('lengths by 1 in = 25.4 mm exactly, as published tables pair them', () => {
    expect(stored(1, 'in')).toBe(25_400)
    expect(stored(1, 'uin')).toBe(0.0254)
    expect(stored(0.25, 'mm')).toBe(250)
    // 0.001 in and 0.010 in, which pump manuals print as 0.03 mm and 0.25 mm; exact by hand.
    expect(stored(0.001, 'in-tir')).toBeCloseTo(25.4, 12)
    expect(stored(0.01, 'in')).toBe(254)
    expect(stored(0.05, 'mm-tir')).toBe(50)
  })

  test('a rate per millimetre is the same number per inch', () => {
    // 0.0005 in per in of bore = 0.5 µm per mm, as pump manuals pair them.
    expect(stored(0.0005, 'in-per-in')).toBe(0.5)
    expect(stored(0.001, 'mm-per-mm')).toBe(1)
    expect(stored(0.5, 'um-per-mm')).toBe(0.5)
    // One helium band on 50 mm.
    expect(stored(0.02, 'helium-bands-per-mm') * 50).toBeCloseTo(0.2937809, 7)
  })

  test('a drop of 0.14 bar as 14 kPa, of 2 psi as 13.79 kPa, of 140 mbar as 14 kPa', () => {
    // 1 psi = 6.894757 kPa (1 lbf/in², exact factors); rounded to its printed digits.
    expect(stored(0.14, 'bar')).toBeCloseTo(14, 12)
    expect(stored(140, 'mbar')).toBeCloseTo(14, 12)
    expect(stored(2, 'psi')).toBeCloseTo(13.789515, 6)
  })

  test('a leak rate by the gas law: 1 Pa·m³/s are 592.15 mL/min and 551.75 sccm', () => {
    // Published table of throughput units, to its printed digits.
    expect(limitUnitMeaning['ml-per-min'].fromStored(1)).toBeCloseTo(592.15, 2)
    expect(limitUnitMeaning['sccm-0c'].fromStored(1)).toBeCloseTo(551.75, 2)
    expect(stored(1, 'sccm-0c')).toBeCloseTo(0.0018124, 7)
    expect(stored(0.5, 'mbar-l-per-s')).toBeCloseTo(0.05, 15)
  })

  test('a liquid leak by the ounce of 28.349523125 g: 5.6 g/h are 0.198 oz/h and 134 g a day', () => {
    expect(stored(1, 'oz-per-h')).toBeCloseTo(28.349523125, 12)
    expect(limitUnitMeaning['oz-per-h'].fromStored(5.6)).toBeCloseTo(0.198, 3)
    expect(limitUnitMeaning['g-per-day'].fromStored(5.6)).toBeCloseTo(134.4, 10)
    expect(stored(1, 'liquid-ml-per-min')).toBe(60)
    expect(stored(1000, 'ppm-by-volume')).toBe(1000)
  })
})

describe('every unit', () => {
  test('goes to the stored unit and back', () => {
    for (const unit of limitUnits) {
      const { toStored, fromStored } = limitUnitMeaning[unit]
      for (const value of [0.0003, 0.05, 1, 2.75, 34.8, 1000]) {
        // Two roundings of doubles: some 1e-16 each.
        expect(Math.abs(fromStored(toStored(value)) / value - 1), unit).toBeLessThan(1e-15)
      }
    }
  })

  test('belongs to a characteristic, and the stored one means what it says', () => {
    const used = new Set(characteristics.flatMap(limitUnitsOf))
    expect([...used].sort()).toEqual([...limitUnits].sort())
    for (const one of characteristics) {
      expect(limitUnitMeaning[storedLimitUnit(one, false)].toStored(1.7), one).toBe(1.7)
    }
  })

  test('has a window whose ends a person would write', () => {
    for (const one of characteristics) {
      for (const unit of limitUnitsOf(one)) {
        const { min, max } = limitBounds(one, unit)
        expect(min, `${one} ${unit}`).toBeGreaterThan(0)
        expect(max / min, `${one} ${unit}`).toBeGreaterThan(100)
        expect(Number(min.toPrecision(1))).toBe(min)
      }
    }
    expect(limitBounds('end-play', 'mm')).toEqual({ min: 0.0005, max: 10 })
  })

  test('is kept with the number as it was typed', () => {
    for (const one of characteristics) {
      for (const unit of limitUnitsOf(one)) {
        const written = { asWritten: 'x', basis: 'house rule', source: 'y' } as const
        const entry = limitEntry(
          typedLimit({ characteristic: one, unit, upper: '0,70', ...written }),
        )
        expect(entry).toMatchObject({ characteristic: one, unit, upper: '0,70', lower: '' })
      }
    }
  })
})
