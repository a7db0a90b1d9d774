import { describe, expect, it } from 'vitest'
import { defaultLimits } from '../../src/domain/default-limits.ts'
import { limitEntry } from '../../src/domain/limit-entry.ts'
import {
  limitUnitMeaning,
  limitUnits,
  startBounds,
  startUnits,
} from '../../src/domain/limit-unit.ts'
import { nextLimitSetVersion } from '../../src/domain/next-limit-set-version.ts'
import { parseLimitSet } from '../../src/domain/parse-limit-set.ts'
import { buildLimit, buildLimitSet } from '../support/build-limit-set.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const limit = {
  characteristic: 'flatness',
  faceMaterial: '',
  upper: '3',
  unit: 'helium-bands',
  asWritten: '3 helium light bands',
  basis: 'published',
  source: 'a leaflet',
}
const drop = { ...limit, characteristic: 'static-drop', upper: '14', unit: 'kPa', withinS: '300' }
const set = (...limits: readonly object[]) => ({ directionsRequiredCount: '2', limits })
const named = { name: 'House' }
const upperOf = (part: object) => accepted(parseLimitSet(set(part), named)).limits[0]!.upper
const faults = (...limits: readonly object[]) => faultsOf(parseLimitSet(set(...limits), named))

describe('the units of limits', () => {
  it('reads helium bands by the helium d line: 3 bands are 0.8813 µm', () => {
    // 3 × 587.5618 nm / 2 (table of standard spectral lines); printed digits of the product.
    expect(upperOf(limit)).toBeCloseTo(0.8813427, 9)
    expect(upperOf({ ...limit, upper: '34.8', unit: 'uin' })).toBeCloseTo(0.88392, 9)
    expect(upperOf({ ...limit, upper: '0,9', unit: 'um' })).toBe(0.9)
  })

  it('reads a drop of 0.14 bar as 14 kPa and of 2 psi as 13.79 kPa', () => {
    // 1 psi = 6.894757 kPa (1 lbf/in², exact factors); rounded to its printed digits.
    expect(upperOf({ ...drop, upper: '0.14', unit: 'bar' })).toBeCloseTo(14, 12)
    expect(upperOf({ ...drop, upper: '2', unit: 'psi' })).toBeCloseTo(13.789515, 6)
  })

  it('reads a leak rate in mL/min at 20 °C and in mbar·L/s', () => {
    const leak = { ...limit, characteristic: 'static-leak-rate' }
    // 101 325 Pa × 1e-6 m³ / 60 s, by hand.
    expect(upperOf({ ...leak, upper: '1', unit: 'ml-per-min' })).toBeCloseTo(0.00168875, 12)
    expect(upperOf({ ...leak, upper: '0.5', unit: 'mbar-l-per-s' })).toBeCloseTo(0.05, 15)
    expect(upperOf({ ...leak, upper: '0.000001', unit: 'pa-m3-per-s' })).toBe(0.000001)
  })

  it('grows with the value in every unit and keeps both ends of its bounds', () => {
    expect(limitUnits).toHaveLength(9)
    for (const unit of limitUnits) {
      const { bounds, characteristic, toStored } = limitUnitMeaning[unit]
      expect(toStored(bounds.min)).toBeGreaterThan(0)
      expect(toStored(bounds.max)).toBeGreaterThan(toStored(bounds.min))
      const withinS = characteristic === 'static-drop' ? '300' : ''
      const at = (value: number) =>
        faults({ ...limit, characteristic, unit, withinS, upper: value })
      expect(at(bounds.min)).toEqual([])
      expect(at(bounds.max)).toEqual([])
      expect(at(bounds.min / 2)).toEqual(['limits[0].upper below'])
      expect(at(bounds.max * 2)).toEqual(['limits[0].upper above'])
    }
  })

  it('refuses a unit of another characteristic', () => {
    expect(faults({ ...limit, unit: 'kPa' })).toEqual(['limits[0].unit not-a-choice'])
    expect(faults({ ...limit, unit: '' })).toEqual(['limits[0].unit empty'])
  })
})

describe('a limit set', () => {
  it('comes back from its own form exactly as it was', () => {
    const leak = buildLimit({ characteristic: 'static-leak-rate', upper: 1.234567890123e-7 })
    const limits = [...defaultLimits, { ...defaultLimits[0]!, faceMaterial: 'alumina', upper: 0.3 }]
    const back = accepted(parseLimitSet(set(...limits.map(limitEntry)), named)).limits
    expect(back).toEqual(limits)
    expect(Number(limitEntry(leak).upper)).toBe(leak.upper)
  })

  it('shows whole and quarter helium bands as bands, and all else as it is stored', () => {
    const { toStored } = limitUnitMeaning['helium-bands']
    const shown = (upper: number) => limitEntry(buildLimit({ upper }))
    expect(shown(toStored(1.25))).toMatchObject({ upper: '1.25', unit: 'helium-bands' })
    expect(shown(0.8814)).toMatchObject({ upper: '0.8814', unit: 'um' })
  })

  it('passes over blank parts and those that are left out', () => {
    const blank = Object.fromEntries(Object.keys(limit).map((name) => [name, '']))
    const out = { characteristic: 'nonsense', leaveOut: 'yes' }
    expect(accepted(parseLimitSet(set(blank, limit, out), named)).limits).toHaveLength(1)
    expect(faults(blank, out)).toEqual(['limits too-few'])
    expect(faults()).toEqual(['limits too-few'])
  })

  it('refuses two limits for one thing', () => {
    expect(faults(limit, limit)).toEqual(['limits[1].characteristic taken'])
    expect(faults(limit, { ...limit, faceMaterial: 'alumina' })).toEqual([])
  })

  it('asks a time of a drop, and of nothing else', () => {
    expect(faults({ ...drop, withinS: '' })).toEqual(['limits[0].withinS empty'])
    expect(faults({ ...drop, withinS: '0' })).toEqual(['limits[0].withinS below'])
    expect(faults({ ...limit, withinS: '300', volumeAtMostL: '28' })).toEqual([
      'limits[0].withinS not-here',
      'limits[0].volumeAtMostL not-here',
    ])
    expect(faults({ ...drop, faceMaterial: 'alumina' })).toEqual([
      'limits[0].faceMaterial not-here',
    ])
  })

  it('reads the start that a drop is written for in kPa, bar or psi, or none', () => {
    const startOf = (startAtLeast: string, startUnit: string) =>
      accepted(parseLimitSet(set({ ...drop, startAtLeast, startUnit }), named)).limits[0]!
        .startAtLeastKPaGauge
    expect(startOf('', '')).toBeNull()
    expect(startOf('170', 'kPa')).toBe(170)
    expect(startOf('1,7', 'bar')).toBe(170)
    // 1 psi = 6.894757 kPa (1 lbf/in², exact factors); rounded to its printed digits.
    expect(startOf('25', 'psi')).toBeCloseTo(172.368932, 6)
  })

  it('asks a start of a drop only, with its unit, within what is possible', () => {
    const start = { startAtLeast: '170', startUnit: 'kPa' }
    expect(faults({ ...limit, ...start })).toEqual([
      'limits[0].startAtLeast not-here',
      'limits[0].startUnit not-here',
    ])
    expect(faults({ ...drop, startAtLeast: '170' })).toEqual(['limits[0].startUnit empty'])
    expect(faults({ ...drop, startUnit: 'bar' })).toEqual(['limits[0].startAtLeast empty'])
    expect(faults({ ...drop, startAtLeast: '170', startUnit: 'um' })).toEqual([
      'limits[0].startUnit not-a-choice',
    ])
    expect(faults({ ...drop, ...start, startAtLeast: 'x' })).toEqual([
      'limits[0].startAtLeast not-a-number',
    ])
    for (const unit of startUnits) {
      const { min, max } = startBounds[unit]
      const at = (value: number) => faults({ ...drop, startUnit: unit, startAtLeast: value })
      expect(at(min)).toEqual([])
      expect(at(max)).toEqual([])
      expect(at(min / 2)).toEqual(['limits[0].startAtLeast below'])
      expect(at(max * 2)).toEqual(['limits[0].startAtLeast above'])
    }
  })

  it('needs what it is founded on', () => {
    expect(faults({ ...limit, source: '', asWritten: '', basis: '' })).toEqual([
      'limits[0].asWritten empty',
      'limits[0].basis empty',
      'limits[0].source empty',
    ])
    expect(faults({ ...limit, basis: 'hearsay' })).toEqual(['limits[0].basis not-a-choice'])
  })

  it('has a name of its own only where it is the first of that name', () => {
    const input = { ...set(limit), name: 'Gas' }
    expect(accepted(parseLimitSet(input, { name: null })).name).toBe('Gas')
    expect(faultsOf(parseLimitSet(set(limit), { name: null }))).toEqual(['name empty'])
    expect(faultsOf(parseLimitSet(input, named))).toEqual(['name unknown-field'])
  })

  it('asks for one to eight directions', () => {
    const asked = (directionsRequiredCount: string) =>
      faultsOf(parseLimitSet({ ...set(limit), directionsRequiredCount }, named))
    expect(asked('')).toEqual(['directionsRequiredCount empty'])
    expect(asked('0')).toEqual(['directionsRequiredCount below'])
    expect(asked('8')).toEqual([])
    expect(asked('9')).toEqual(['directionsRequiredCount above'])
  })

  it('is followed only in its newest version', () => {
    const first = buildLimitSet()
    const second = buildLimitSet({ id: 2, version: 2 })
    const other = buildLimitSet({ id: 3, name: 'Gas', version: 7 })
    expect(nextLimitSetVersion(second, [second, other, first])).toBe(3)
    expect(() => nextLimitSetVersion(first, [second, other, first])).toThrow('not-newest')
  })
})

describe('the default limits', () => {
  it('stand each with a source, the unseen standard said to be unseen', () => {
    expect(defaultLimits.map((one) => one.characteristic)).toEqual([
      'flatness',
      'static-drop',
      'static-leak-rate',
    ])
    for (const one of defaultLimits) expect(one.source.length).toBeGreaterThan(20)
    // 0.17 MPa gauge, as the clause is quoted.
    expect(defaultLimits[1]).toMatchObject({
      upper: 14,
      withinS: 300,
      volumeAtMostL: 28,
      startAtLeastKPaGauge: 170,
    })
    expect(defaultLimits[1]!.source).toContain('not seen')
  })
})
