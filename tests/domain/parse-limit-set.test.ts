import { describe, expect, it } from 'vitest'
import { characteristics } from '../../src/domain/characteristic.ts'
import { defaultLimits } from '../../src/domain/default-limits.ts'
import { limitEntry } from '../../src/domain/limit-entry.ts'
import type { Limit } from '../../src/domain/limit-set.ts'
import { isPerMmUnit, limitUnitMeaning } from '../../src/domain/limit-unit.ts'
import { limitBounds, limitUnitsOf, perMmSizesOf } from '../../src/domain/limit-units-of.ts'
import { nextLimitSetVersion } from '../../src/domain/next-limit-set-version.ts'
import { parseLimitSet, uncertaintySharePercent } from '../../src/domain/parse-limit-set.ts'
import { pressureUnits, startBounds } from '../../src/domain/pressure-units.ts'
import { typedLimit } from '../../src/domain/typed-limit.ts'
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
const drop = {
  ...limit,
  characteristic: 'static-drop',
  upper: '14',
  unit: 'kPa',
  within: '5',
  withinUnit: 'min',
}
const set = (...limits: readonly object[]) => ({ directionsRequiredCount: '2', limits })
const named = { name: 'House' }
const upperOf = (part: object) => accepted(parseLimitSet(set(part), named)).limits[0]!.upper
const faults = (...limits: readonly object[]) => faultsOf(parseLimitSet(set(...limits), named))

describe('the numbers of a limit', () => {
  it('are read in the unit they are written in', () => {
    // 3 × 587.5618 nm / 2 (table of standard spectral lines); 1 µin = 0.0254 µm exactly.
    expect(upperOf(limit)).toBeCloseTo(0.8813427, 9)
    expect(upperOf({ ...limit, upper: '34.8', unit: 'uin' })).toBeCloseTo(0.88392, 9)
    expect(upperOf({ ...limit, upper: '0,9', unit: 'um' })).toBe(0.9)
    expect(upperOf({ ...drop, upper: '0.14', unit: 'bar' })).toBeCloseTo(14, 12)
  })

  it('keep both ends of the window of every unit of every characteristic, and refuse beyond', () => {
    let tried = 0
    for (const characteristic of characteristics) {
      for (const unit of limitUnitsOf(characteristic)) {
        const { min, max } = limitBounds(characteristic, unit)
        const isDrop = characteristic === 'static-drop'
        const hold = isDrop ? { within: '5', withinUnit: 'min' } : {}
        const perMmOf = isPerMmUnit(unit) ? { perMmOf: perMmSizesOf(characteristic)[0] } : {}
        const at = (upper: number) =>
          faults({ ...limit, characteristic, unit, upper, ...hold, ...perMmOf })
        expect(at(min), `${characteristic} ${unit}`).toEqual([])
        expect(at(max), `${characteristic} ${unit}`).toEqual([])
        expect(at(min / 2)).toEqual(['limits[0].upper below'])
        expect(at(max * 2)).toEqual(['limits[0].upper above'])
        tried++
      }
    }
    expect(tried).toBeGreaterThan(60)
  })

  it('refuse a unit of another characteristic', () => {
    expect(faults({ ...limit, unit: 'kPa' })).toEqual(['limits[0].unit not-a-choice'])
    expect(faults({ ...limit, unit: '' })).toEqual(['limits[0].unit empty'])
  })

  it('are an upper, a lower or both, and the lower one lies below', () => {
    const height = { ...limit, characteristic: 'face-height', unit: 'mm' }
    const both = accepted(parseLimitSet(set({ ...height, lower: '1,5', upper: '3.2' }), named))
    expect(both.limits[0]).toMatchObject({
      lower: 1500,
      upper: 3200,
      typedLower: '1,5',
      typedUpper: '3.2',
      typedUnit: 'mm',
    })
    const lower = accepted(parseLimitSet(set({ ...height, lower: '1.5', upper: '' }), named))
    expect(lower.limits[0]).toMatchObject({ lower: 1500, upper: null })
    expect(faults({ ...height, upper: '' })).toEqual(['limits[0].upper limit-needed'])
    expect(faults({ ...height, lower: '3.2', upper: '3.2' })).toEqual([
      'limits[0].lower lower-not-below',
    ])
  })

  it('per millimetre name the size, and only they do', () => {
    const face = { ...limit, characteristic: 'chamber-face-squareness', upper: '0.5' }
    const perMm = { ...face, unit: 'um-per-mm', perMmOf: 'bore' }
    expect(accepted(parseLimitSet(set(perMm), named)).limits[0]).toMatchObject({
      upper: 0.5,
      perMmOf: 'bore',
    })
    expect(faults({ ...perMm, perMmOf: '' })).toEqual(['limits[0].perMmOf empty'])
    expect(faults({ ...perMm, perMmOf: 'face' })).toEqual(['limits[0].perMmOf not-a-choice'])
    expect(faults({ ...face, unit: 'um-tir', upper: '50', perMmOf: 'bore' })).toEqual([
      'limits[0].perMmOf not-here',
    ])
  })
})

describe('what a limit holds for', () => {
  const conditions = {
    faceMaterial: 'alumina',
    componentKind: 'stationary-seat',
    service: 'dry-gas',
    diameterOverMm: '75',
    diameterUpToMm: '150',
    pressureOver: '20',
    pressureUpTo: '100',
    pressureUnit: 'bar',
    speedOverPerMin: '1500',
    speedUpToPerMin: '3000',
  }

  it('is read whole, pressures in kPa', () => {
    expect(
      accepted(parseLimitSet(set({ ...limit, ...conditions }), named)).limits[0],
    ).toMatchObject({
      faceMaterial: 'alumina',
      componentKind: 'stationary-seat',
      service: 'dry-gas',
      diameterOverMm: 75,
      diameterUpToMm: 150,
      pressureOverKPa: 2000,
      pressureUpToKPa: 10_000,
      speedOverPerMin: 1500,
      speedUpToPerMin: 3000,
    })
  })

  it('refuses turned ranges, a pressure without its unit, and a service that was not stated', () => {
    const wrong = (change: object) => faults({ ...limit, ...conditions, ...change })
    expect(wrong({ diameterUpToMm: '75' })).toEqual(['limits[0].diameterOverMm lower-not-below'])
    expect(wrong({ pressureUpTo: '20' })).toEqual(['limits[0].pressureOver lower-not-below'])
    expect(wrong({ speedUpToPerMin: '1500' })).toEqual([
      'limits[0].speedOverPerMin lower-not-below',
    ])
    expect(wrong({ pressureUnit: '' })).toEqual(['limits[0].pressureUnit empty'])
    expect(wrong({ service: 'not-stated' })).toEqual(['limits[0].service not-a-choice'])
    expect(wrong({ componentKind: 'spring' })).toEqual(['limits[0].componentKind not-a-choice'])
  })

  it('asks material and face of faces only', () => {
    const machine = { ...limit, characteristic: 'end-play', unit: 'mm', upper: '0.05' }
    expect(faults({ ...machine, faceMaterial: 'alumina', componentKind: 'rotating-face' })).toEqual(
      ['limits[0].faceMaterial not-here', 'limits[0].componentKind not-here'],
    )
    expect(faults({ ...machine, diameterUpToMm: '50', service: 'slurry' })).toEqual([])
  })
})

describe('a limit set', () => {
  it('comes back from its own form exactly as it was', () => {
    const written = { asWritten: 'as there', basis: 'published', source: 'a table' } as const
    const limits = [
      ...defaultLimits,
      typedLimit({
        ...written,
        characteristic: 'flatness',
        upper: '34.8',
        unit: 'uin',
        faceMaterial: 'alumina',
        componentKind: 'stationary-seat',
        service: 'dry-gas',
        diameterOverMm: 25.4,
        diameterUpToMm: 76.2,
        pressureOverKPa: 2068.427,
        pressureUpToKPa: 10_000,
        edition: '2nd edition',
        clause: '6.1',
      }),
      typedLimit({
        ...written,
        characteristic: 'sleeve-run-out',
        upper: '0.001',
        unit: 'in-per-in',
        perMmOf: 'shaft',
        pressureUpToKPa: 2000,
      }),
      typedLimit({
        ...written,
        characteristic: 'face-height',
        lower: '1.234567890123',
        unit: 'mm',
      }),
      typedLimit({
        ...written,
        characteristic: 'static-drop',
        upper: '2',
        unit: 'psi',
        withinS: 301.5,
        startAtLeastKPaGauge: 172.368932,
      }),
    ]
    const back = accepted(parseLimitSet(set(...limits.map(limitEntry)), named)).limits
    expect(back).toEqual(limits)
  })

  it('of before typed numbers were kept reads back as the same limits', () => {
    const old = (change: Partial<Limit>) => {
      const { id: _, limitSetId: __, ...one } = buildLimit({ typedUnit: '', ...change })
      return one
    }
    const limits = [
      old({ upper: limitUnitMeaning['helium-bands'].toStored(3) }),
      old({ characteristic: 'static-leak-rate', upper: 1.234567890123e-6 }),
      old({ characteristic: 'static-drop', upper: 14, withinS: 300, startAtLeastKPaGauge: 170 }),
    ]
    const back = accepted(parseLimitSet(set(...limits.map(limitEntry)), named)).limits
    const numbers = (all: readonly (typeof limits)[number][]) =>
      all.map(({ lower, upper, withinS, startAtLeastKPaGauge }) => {
        return { lower, upper, withinS, startAtLeastKPaGauge }
      })
    expect(numbers(back)).toEqual(numbers(limits))
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

  it('may hold two limits for one thing while it is a draft', () => {
    expect(faults(limit, limit)).toEqual([])
  })

  it('states the share of a limit that the uncertainty may take up, else it is a third', () => {
    const shareOf = (uncertaintySharePercent: string) =>
      accepted(parseLimitSet({ ...set(limit), uncertaintySharePercent }, named))
        .uncertaintyShareAtMost
    expect(shareOf('')).toBe(1 / 3)
    for (const typed of ['25', '33.3', '12.5', '7']) {
      expect(shareOf(typed)).toBeCloseTo(Number(typed) / 100, 15)
      expect(uncertaintySharePercent(shareOf(typed))).toBe(typed)
    }
    expect(uncertaintySharePercent(1 / 3)).toBe('')
    const beyond = { ...set(limit), uncertaintySharePercent: '101' }
    expect(faultsOf(parseLimitSet(beyond, named))).toEqual(['uncertaintySharePercent above'])
  })

  it('asks a time of a drop, and of nothing else', () => {
    expect(faults({ ...drop, within: '' })).toEqual(['limits[0].within empty'])
    expect(faults({ ...drop, within: '0' })).toEqual(['limits[0].within below'])
    expect(faults({ ...drop, withinUnit: '' })).toEqual(['limits[0].withinUnit empty'])
    expect(faults({ ...limit, within: '300', withinUnit: 's', volumeAtMostL: '28' })).toEqual([
      'limits[0].within not-here',
      'limits[0].withinUnit not-here',
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
    for (const unit of pressureUnits) {
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
