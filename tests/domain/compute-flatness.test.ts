import { describe, expect, test } from 'vitest'
import { completeFlatnessReading } from '../../src/domain/complete-flatness-reading.ts'
import { computeFlatness } from '../../src/domain/compute-flatness.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildInstrument, buildInstruments } from '../support/build-instrument.ts'
import { buildSeal } from '../support/build-seal.ts'

const helium = { lampId: 'helium', flatToleranceUm: 0.05 } as const

describe('computed columns of a reading', () => {
  test('take the larger direction in bands and give its height', () => {
    const computed = computeFlatness(buildFlatnessReading(), helium)
    expect(computed.bands).toBe(2)
    // 2 x 587.5618 nm / 2 = 0.5875618 um: helium d line, table of standard spectral lines.
    expect(computed.flatnessUm).toBeCloseTo(0.5875618, 12) // rounding of doubles
    expect(computed.form).toBe('convex')
    expect(computed.wavelengthNm).toBe(587.5618)
    expect(computed.method).toBe('flatness/counted 1')
  })

  test('carry reading and optical flat in the uncertainty', () => {
    // Second route: reading 0.25 band rectangular, flat 0.05 um rectangular (JCGM 100, 4.3.7).
    const expected = Math.sqrt((0.25 * 0.2937809) ** 2 / 3 + 0.05 ** 2 / 3)
    const computed = computeFlatness(buildFlatnessReading(), helium)
    expect(computed.standardUncertaintyUm).toBeCloseTo(expected, 12) // rounding of doubles
    const unknown = computeFlatness(buildFlatnessReading(), { ...helium, flatToleranceUm: null })
    expect(unknown.standardUncertaintyUm).toBeLessThan(expected)
  })

  test('follow the viewing angle', () => {
    const oblique = computeFlatness({ ...buildFlatnessReading(), viewingAngleDeg: 60 }, helium)
    // cos 60 = 1/2: a band is a whole wavelength.
    expect(oblique.flatnessUm).toBeCloseTo(2 * 0.5875618, 12) // rounding of doubles
  })

  test('add the two directions of a saddle', () => {
    expect(computeFlatness({ ...buildFlatnessReading(), pattern: 'saddle' }, helium).bands).toBe(3)
  })

  test('add the errors of the two directions of a saddle in quadrature', () => {
    const saddle = { ...buildFlatnessReading(), pattern: 'saddle' } as const
    const expected = Math.sqrt((2 * (0.25 * 0.2937809) ** 2) / 3 + 0.05 ** 2 / 3)
    const computed = computeFlatness(saddle, helium)
    expect(computed.standardUncertaintyUm).toBeCloseTo(expected, 12) // rounding of doubles
  })

  test('give straight bands zero height and a real uncertainty', () => {
    const directions = [{ directionDeg: 0, bands: 0, bandsTyped: '' }]
    const reading = { ...buildFlatnessReading(), pattern: 'straight', directions } as const
    const straight = computeFlatness(reading, helium)
    expect([straight.bands, straight.flatnessUm, straight.form]).toEqual([0, 0, 'flat'])
    expect(straight.standardUncertaintyUm).toBeGreaterThan(0)
  })

  test('are absent together for an unreadable face, but for the lamp', () => {
    const reading = { ...buildFlatnessReading(), pattern: 'unreadable' } as const
    expect(computeFlatness(reading, helium)).toEqual({
      wavelengthNm: 587.5618,
      bandHeightUm: expect.closeTo(0.2937809, 12), // rounding of doubles
      bands: null,
      flatnessUm: null,
      form: 'unreadable',
      standardUncertaintyUm: null,
      method: 'flatness/counted 1',
    })
  })

  test('name rings by the side that the press test showed', () => {
    const rings = { ...buildFlatnessReading(), pattern: 'rings' } as const
    expect(computeFlatness({ ...rings, ringCentre: 'high' }, helium).form).toBe('convex')
    expect(computeFlatness({ ...rings, ringCentre: 'low' }, helium).form).toBe('concave')
    expect(computeFlatness({ ...rings, ringCentre: null }, helium).form).toBe('undetermined')
  })
})

describe('completing a reading', () => {
  const context = {
    components: buildSeal().components,
    instruments: buildInstruments(),
    today: '2027-02-01',
  }

  test('adds its face, its figures and the instruments of the day', () => {
    const complete = completeFlatnessReading(buildFlatnessReading({ componentId: 12 }), context)
    expect(complete.faceKind).toBe('stationary-seat')
    expect(complete.bands).toBe(2)
    expect([complete.lamp.number, complete.lamp.status]).toEqual(['L-01', 'overdue'])
    expect([complete.flat.number, complete.flat.dueOn]).toEqual(['F-01', '2027-01-15'])
  })

  test('goes by the lamp of the instrument', () => {
    const instruments = [
      buildInstrument('lamp', { lampId: 'sodium' }),
      buildInstrument('optical-flat'),
    ]
    const complete = completeFlatnessReading(buildFlatnessReading(), { ...context, instruments })
    expect(complete.wavelengthNm).toBe(589.2938)
  })

  test('throws outside its context', () => {
    const stranger = buildFlatnessReading({ componentId: 99 })
    expect(() => completeFlatnessReading(stranger, context)).toThrow(RangeError)
    const instruments = [
      buildInstrument('lamp', { lampId: 'candle' }),
      buildInstrument('optical-flat'),
    ]
    const build = () => completeFlatnessReading(buildFlatnessReading(), { ...context, instruments })
    expect(build).toThrow('a lamp of the table, got candle')
  })
})
