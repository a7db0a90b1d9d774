import { describe, expect, test } from 'vitest'
import { completeFlatnessReading } from '../../src/domain/complete-flatness-reading.ts'
import { computeFlatness } from '../../src/domain/compute-flatness.ts'
import {
  type FlatnessBudgetInput,
  noFlatnessBudgetInput,
} from '../../src/domain/flatness-budget-input.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildInstrument, buildInstruments } from '../support/build-instrument.ts'
import { buildSeal } from '../support/build-seal.ts'

const helium = {
  lampId: 'helium',
  flatToleranceUm: 0.05,
  flatStandardUncertaintyUm: null,
} as const

describe('computed columns of a reading', () => {
  test('take the larger direction in bands and give its height', () => {
    const computed = computeFlatness(buildFlatnessReading(), helium)
    expect(computed.bands).toBe(2)
    // 2 x 587.5618 nm / 2 = 0.5875618 um: helium d line, table of standard spectral lines.
    expect(computed.flatnessUm).toBeCloseTo(0.5875618, 12) // rounding of doubles
    expect(computed.form).toBe('convex')
    expect(computed.wavelengthNm).toBe(587.5618)
    expect(computed.method).toBe('flatness/counted 2')
  })

  test('carry reading and optical flat in the uncertainty', () => {
    // Second route: reading 0.25 band rectangular, flat 0.05 um rectangular (JCGM 100, 4.3.7).
    // The wavelength, 0.05 nm to either side, adds 29 pm.
    const wavelength = (0.05 / 587.5618) * 0.5875618
    const expected = Math.sqrt((0.25 * 0.2937809) ** 2 + 0.05 ** 2 + wavelength ** 2) / Math.sqrt(3)
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
    const wavelength = (0.05 / 587.5618) * 3 * 0.2937809
    const expected =
      Math.sqrt(2 * (0.25 * 0.2937809) ** 2 + 0.05 ** 2 + wavelength ** 2) / Math.sqrt(3)
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
      uncertainty: null,
      method: 'flatness/counted 2',
    })
  })

  test('name rings by the side that the press test showed', () => {
    const rings = { ...buildFlatnessReading(), pattern: 'rings' } as const
    expect(computeFlatness({ ...rings, ringCentre: 'high' }, helium).form).toBe('convex')
    expect(computeFlatness({ ...rings, ringCentre: 'low' }, helium).form).toBe('concave')
    expect(computeFlatness({ ...rings, ringCentre: null }, helium).form).toBe('undetermined')
  })
})

describe('the uncertainty of a reading', () => {
  const worked: FlatnessBudgetInput = {
    ...noFlatnessBudgetInput,
    readingHalfWidthBands: 0.1,
    repeatability: { standardDeviationBands: 0.15, count: 3, degreesOfFreedom: null },
    opticalFlatToleranceUm: 0.025,
    viewingAngleLimitDeg: 10,
    // 0.18 um a kelvin, and the difference whose rectangular half width leaves 10 nm standard.
    thermal: {
      deltaK: (0.01 * Math.sqrt(3)) / 0.18,
      expansionPerK: 4e-6,
      diameterMm: 60,
      thicknessMm: 10,
    },
  }
  const reading = (budgetInput: FlatnessBudgetInput | null) =>
    computeFlatness({ ...buildFlatnessReading(), budgetInput }, helium).uncertainty!

  test('is that of the worked budget of two helium bands, from what was parsed', () => {
    const { standardUncertainty, budget } = reading(worked)
    // Lines 17.0, 25.4, 14.4, 5.2 and 10 nm: u = 35.6 nm, printed to 0.1 nm; own worked example.
    expect(standardUncertainty * 1000).toBeCloseTo(35.6, 1)
    const contributions = Object.fromEntries(
      budget.map((line) => [line.source, line.contribution * 1000]),
    )
    for (const [source, nm] of [
      ['reading', 17.0],
      ['repeatability', 25.4],
      ['optical-flat', 14.4],
      ['viewing-angle', 5.2],
      ['thermal-bow', 10],
    ] as const) {
      expect(Math.abs((contributions[source] ?? 0) - nm), source).toBeLessThan(0.051) // 0.1 nm
    }
  })

  test('names what nobody stated, and nothing that was', () => {
    expect(reading(null).leftOut).toEqual([
      'repeatability',
      'viewing-angle',
      'thermal-bow',
      'thermal-bow-of-flat',
    ])
    expect(reading(worked).leftOut).toEqual(['thermal-bow-of-flat'])
    const unknownFlat = computeFlatness(buildFlatnessReading(), {
      ...helium,
      flatToleranceUm: null,
    })
    expect(unknownFlat.uncertainty?.leftOut).toContain('optical-flat')
  })

  test('goes by the flat’s error that the reader states before the one in its papers', () => {
    const line = (of: FlatnessBudgetInput | null) =>
      reading(of).budget.find((one) => one.source === 'optical-flat')?.value
    expect(line(null)).toBeCloseTo(0.05 / Math.sqrt(3), 12) // rounding of doubles
    expect(line(worked)).toBeCloseTo(0.025 / Math.sqrt(3), 12) // rounding of doubles
  })

  test('follows Student’s t where counts were repeated, with a degree of freedom less', () => {
    const repeats = [2, 2.5, 1.5].map((bands) => ({ bands, typed: String(bands) }))
    const repeated = reading({ ...noFlatnessBudgetInput, readingHalfWidthBands: 0, repeats })
    const line = repeated.budget.find((one) => one.source === 'repeatability')
    expect(line).toMatchObject({ degreesOfFreedom: 2 })
    // The mean of the repeats is the count of two bands: s of 0.5 over the root of three.
    expect(line?.value).toBeCloseTo(0.5 / Math.sqrt(3), 12) // rounding of doubles
    // A count beside their mean is one count, whose scatter is that of one.
    const apart = repeats.map((one) => ({ ...one, bands: one.bands + 0.5 }))
    const single = reading({ ...noFlatnessBudgetInput, repeats: apart })
    const own = single.budget.find((one) => one.source === 'repeatability')
    expect(own?.value).toBeCloseTo(0.5, 12) // rounding of doubles
    expect(own?.degreesOfFreedom).toBe(2)
    // With nothing else but the flat, the lamp and the scatter: few degrees of freedom.
    expect(repeated.coverageFactor).toBeGreaterThan(2)
    expect(repeated.expandedUncertainty).toBeCloseTo(
      repeated.coverageFactor * repeated.standardUncertainty,
      12, // rounding of doubles
    )
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
