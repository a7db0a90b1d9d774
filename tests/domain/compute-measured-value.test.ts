import { describe, expect, test } from 'vitest'
import { completeMeasuredValue } from '../../src/domain/complete-measured-value.ts'
import { computeMeasuredValue } from '../../src/domain/compute-measured-value.ts'
import type { Calibration, Instrument } from '../../src/domain/instrument.ts'
import { measuredAccuracy } from '../../src/domain/measured-accuracy.ts'
import type { MeasuredSource } from '../../src/domain/measured-uncertainty.ts'
import type { LengthUnit } from '../../src/domain/measured-value.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'
import { buildMeasuredValue, builtDial } from '../support/build-measured-value.ts'
import { buildSeal } from '../support/build-seal.ts'

const noBudget = {
  leverAngleDeg: null,
  cutOffMm: null,
  temperatureHalfWidthK: null,
  settingStandardUncertaintyUm: null,
}
const um = (...values: number[]) => values.map((one) => ({ um: one, typed: String(one / 1000) }))

function compute(
  instrument: Instrument,
  changes: Partial<MeasuredSource>,
  unit: LengthUnit = 'mm',
) {
  const source: MeasuredSource = {
    characteristic: 'shaft-run-out',
    readings: um(40),
    budgetInput: noBudget,
    expansionPerK: null,
    ...changes,
  }
  return computeMeasuredValue(
    source,
    measuredAccuracy(instrument, '2026-11-25', { unit, readings: source.readings }),
  )
}

describe('a run-out', () => {
  test('read once has the error and the step of its dial twice: it is a difference', () => {
    const { valueUm, uncertainty, method } = compute(builtDial, {})
    expect(valueUm).toBe(40)
    // √2 · √((13 µm)² / 3 + (10 µm)² / 12) = √2 · √(56.333 + 8.333) = 11.372 µm, by hand.
    expect(uncertainty.standardUncertainty).toBeCloseTo(11.372, 3) // digits of the hand calculation
    expect(uncertainty.coverageFactor).toBe(2)
    expect(uncertainty.leftOut).toEqual(['repeatability'])
    expect(method).toBe('dial/figure 2')
  })

  test('read again is the mean, and its scatter counts', () => {
    const { valueUm, uncertainty } = compute(builtDial, { readings: um(40, 50, 60) })
    expect(valueUm).toBeCloseTo(50, 12) // rounding of doubles
    // s = 10 µm of three: 10 / √3 = 5.7735; with 11.372 of the dial √(129.33 + 33.33) = 12.754.
    expect(uncertainty.standardUncertainty).toBeCloseTo(12.754, 3)
    // Welch–Satterthwaite: 12.754⁴ / (5.7735⁴ / 2) = 47.6 degrees of freedom, so k = 2.01.
    expect(uncertainty.effectiveDegreesOfFreedom).toBeCloseTo(47.6, 1)
    expect(uncertainty.coverageFactor).toBeCloseTo(2.01, 2)
    expect(uncertainty.leftOut).toEqual([])
  })

  test('of a lever is reduced by the cosine of its angle, which is not well known', () => {
    const lever = buildInstrument('lever-indicator', { unit: 'mm', resolutionStep: 0.002 })
    const budgetInput = { ...noBudget, leverAngleDeg: 30 }
    const tilted = compute(lever, { budgetInput })
    expect(tilted.valueUm).toBeCloseTo(34.641, 3) // 40 µm · cos 30°
    // √2 · cos 30° · 2 µm / √12 = 1 / √2 µm; rounding of doubles.
    expect(tilted.uncertainty.standardUncertainty).toBeCloseTo(Math.SQRT1_2, 12)
    expect(tilted.uncertainty.leftOut).toEqual(['repeatability', 'instrument', 'alignment'])
  })
})

describe('a height', () => {
  const micrometer = buildInstrument('micrometer', {
    unit: 'mm',
    resolutionStep: 0.001,
    calibrations: [buildCalibration({ expandedUncertainty: 0.002, coverageFactor: 2 })],
    largestError: 0.004,
  })
  const height = { characteristic: 'face-height', readings: um(3172) } as const

  test('has its calibration beside its largest error, and its setting and warmth', () => {
    const budgetInput = {
      ...noBudget,
      settingStandardUncertaintyUm: 0.5,
      temperatureHalfWidthK: 3,
    }
    const { valueUm, uncertainty, method } = compute(micrometer, {
      ...height,
      budgetInput,
      expansionPerK: 5e-6,
    })
    expect(valueUm).toBe(3172)
    // Calibration 1, error 4 / √3 = 2.30940, step 0.28868, setting 0.5, warmth
    // 5e-6 · 3172 · 3 / √3 = 0.02747 µm: √(1 + 5.33333 + 0.08333 + 0.25 + 0.00075).
    expect(uncertainty.standardUncertainty).toBeCloseTo(2.58214, 4)
    expect(uncertainty.leftOut).toEqual(['repeatability', 'alignment'])
    expect(method).toBe('height/figure 2')
  })

  test('leaves out warmth where the material tells no expansion', () => {
    const budgetInput = { ...noBudget, temperatureHalfWidthK: 3 }
    const { uncertainty } = compute(micrometer, { ...height, budgetInput })
    expect(uncertainty.leftOut).toEqual(['repeatability', 'setting', 'temperature', 'alignment'])
  })

  test('of which the largest less the smallest is meant is a difference', () => {
    const { uncertainty, method } = compute(micrometer, {
      characteristic: 'face-parallelism',
      readings: um(5),
    })
    // √2 · √(1² + 2.30940² + 0.28868²) = 3.58236 µm, by hand.
    expect(uncertainty.standardUncertainty).toBeCloseTo(3.58236, 4)
    expect(method).toBe('dial/figure 2')
  })
})

describe('an instrument that was found to err', () => {
  const erring = (changes: Partial<Calibration>) =>
    buildInstrument('micrometer', {
      unit: 'mm',
      resolutionStep: 0.001,
      calibrations: [
        buildCalibration({ expandedUncertainty: 0.002, coverageFactor: 2, ...changes }),
      ],
    })
  const height = { characteristic: 'face-height', readings: um(3172) } as const

  test('has its error beside how well that was known, for it is not corrected', () => {
    const { uncertainty } = compute(erring({ asLeftError: -0.003 }), height)
    expect(uncertainty.budget.map(({ source, distribution }) => [source, distribution])).toEqual([
      ['resolution', 'rectangular'],
      ['calibration', 'normal'],
      ['instrument', 'rectangular'],
    ])
    // √(1² + 3² / 3 + 0.28868²) = 2.02073 µm, by hand; of the calibration alone 1.04083.
    expect(uncertainty.standardUncertainty).toBeCloseTo(2.02073, 4)
    expect(uncertainty.leftOut).not.toContain('instrument')
  })

  test('names its error as left out where nobody says how large it is', () => {
    const { uncertainty } = compute(erring({}), height)
    expect(uncertainty.standardUncertainty).toBeCloseTo(1.04083, 4) // √(1² + 0.28868²), by hand
    expect(uncertainty.leftOut).toContain('instrument')
  })
})

describe('a roughness', () => {
  const profilometer = buildInstrument('profilometer', {
    unit: 'um',
    resolutionStep: 0.001,
    largestError: 0.01,
  })

  test('has the error and the step of its instrument, and its scatter over the surface', () => {
    const once = compute(profilometer, {
      characteristic: 'roughness',
      readings: [{ um: 0.12, typed: '0.12' }],
    })
    // √((0.01)² / 3 + (0.001)² / 12) = 0.0057807 µm, by hand.
    expect(once.uncertainty.standardUncertainty).toBeCloseTo(0.0057807, 7)
    expect(once.uncertainty.leftOut).toEqual(['surface'])
    expect(once.method).toBe('roughness/figure 2')
    const readings = [0.1, 0.12, 0.14].map((one) => ({ um: one, typed: String(one) }))
    const thrice = compute(profilometer, { characteristic: 'roughness', readings })
    expect(thrice.valueUm).toBeCloseTo(0.12, 12) // rounding of doubles
    expect(thrice.uncertainty.budget.map((one) => one.source)).toContain('surface')
  })
})

describe('an instrument whose record tells no numbers', () => {
  const bare = buildInstrument('dial-indicator')

  test('reads as finely as was typed, and its error is left out', () => {
    const { uncertainty } = compute(bare, { readings: [{ um: 40, typed: '0,04' }] })
    // √2 · 10 µm / √12 = 4.0825 µm.
    expect(uncertainty.standardUncertainty).toBeCloseTo(4.0825, 4)
    expect(uncertainty.leftOut).toEqual(['repeatability', 'instrument'])
    const inch = compute(bare, { readings: [{ um: 50.8, typed: '0.002' }] }, 'in')
    // √2 · 25.4 µm / √12 = 10.3695 µm: a thousandth of an inch.
    expect(inch.uncertainty.standardUncertainty).toBeCloseTo(10.3695, 4)
  })

  test('tells no lengths where its numbers are in another unit', () => {
    const strange = buildInstrument('dial-indicator', { unit: 'kPa', resolutionStep: 7 })
    expect(measuredAccuracy(strange, '2026-11-25', { unit: 'mm', readings: um(40) })).toEqual({
      standardUncertaintyUm: null,
      largestErrorUm: null,
      resolutionUm: 10,
      isLever: false,
    })
  })
})

describe('completing a value', () => {
  const { components } = buildSeal()
  const carbon = components.find((one) => one.material === 'carbon-graphite')!

  test('adds its figure, and the instrument as it stood on the day', () => {
    const dial = { ...builtDial, id: 5 }
    const context = { components, instruments: [dial], today: '2027-01-16' }
    const complete = completeMeasuredValue(buildMeasuredValue({ instrumentId: 5 }), context)
    expect([complete.instrument.number, complete.instrument.status]).toEqual(['D-01', 'overdue'])
    expect(complete.valueUm).toBe(40)
  })

  test('takes the expansion of the material of the face', () => {
    const micrometer = buildInstrument('micrometer', { unit: 'mm', resolutionStep: 0.001 })
    const context = { components, instruments: [micrometer], today: '2026-11-25' }
    const measured = buildMeasuredValue({
      characteristic: 'face-height',
      componentId: carbon.id,
      instrumentId: micrometer.id,
      readings: um(3172),
      budgetInput: { ...noBudget, temperatureHalfWidthK: 2 },
    })
    const { uncertainty } = completeMeasuredValue(measured, context)
    const warmth = uncertainty.budget.find((one) => one.source === 'temperature')
    // 5e-6 / K (from memory) · 3172 µm · 2 K / √3 = 0.018314 µm.
    expect(warmth?.contribution).toBeCloseTo(0.018314, 6)
  })

  test('throws outside its context', () => {
    const context = { components, instruments: [], today: '2026-11-25' }
    expect(() => completeMeasuredValue(buildMeasuredValue(), context)).toThrow('of its context')
  })
})
