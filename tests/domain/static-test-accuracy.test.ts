import { describe, expect, test } from 'vitest'
import { computeStaticTest } from '../../src/domain/compute-static-test.ts'
import { noStaticTestBudgetInput } from '../../src/domain/static-test.ts'
import { staticTestAccuracy } from '../../src/domain/static-test-accuracy.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'
import { buildStaticTest } from '../support/build-static-test.ts'

/** Calibrated with U in its own unit, k = 2, and no error found unless one is named. */
const calibrated = (expandedUncertainty: number, asLeftError: number | null = 0) => [
  buildCalibration({ expandedUncertainty, coverageFactor: 2, asLeftError }),
]
const gauge = buildInstrument('pressure-gauge', { unit: 'kPa', calibrations: calibrated(0.06) })
const thermometer = buildInstrument('thermometer', { unit: 'C', calibrations: calibrated(0.1) })
const volume = buildInstrument('volume', { unit: 'L', calibrations: calibrated(0.2) })
const instruments = [gauge, thermometer, volume]

/** 5 L from 271.325 kPa at 21 °C to 268.1 kPa at 20.5 °C in 600 s. */
const worked = buildStaticTest({
  volumeL: 5,
  startPressureKPaAbs: 271.325,
  startTemperatureC: 21,
  endPressureKPaAbs: 268.1,
  endTemperatureC: 20.5,
  durationS: 600,
  gaugeInstrumentId: gauge.id,
  thermometerInstrumentId: thermometer.id,
  volumeInstrumentId: volume.id,
  budgetInput: { ...noStaticTestBudgetInput, timeS: 0 },
})

describe('what is known about the readings of a static test', () => {
  test('follows from the papers of gauge, thermometer and volume', () => {
    expect(staticTestAccuracy(worked, instruments)).toEqual({
      volumeRelative: expect.closeTo(0.02, 12), // rounding of doubles
      volumeErrorRelative: 0,
      pressurePa: expect.closeTo(30, 9), // rounding of doubles
      pressureErrorPa: 0,
      pressureStepPa: null,
      temperatureK: expect.closeTo(0.05, 12), // rounding of doubles
      temperatureErrorK: 0,
      temperatureStepK: null,
      timeS: 0,
      leftOut: [],
    })
  })

  test('makes the budget of the worked leak, 7.93e-4 of 0.022992 Pa·m³/s', () => {
    const { leakPaM3PerS, leakUncertainty } = computeStaticTest(
      worked,
      staticTestAccuracy(worked, instruments),
    )
    expect(leakPaM3PerS).toBeCloseTo(0.022992, 6) // printed digits
    // Own worked example, by hand: volume 4.60e-4, both pressures 3.54e-4, both temperatures
    // 5.42e-4. It takes the gas for as warm as its reference: half a percent.
    const byHand = { u: 7.93e-4, volume: 4.6e-4, pressure: 3.54e-4, temperature: 5.42e-4 }
    const halfPercent = (value: number, expected: number) =>
      expect(Math.abs(value / expected - 1)).toBeLessThan(0.0055)
    halfPercent(leakUncertainty?.standardUncertainty ?? 0, byHand.u)
    const of = (...sources: readonly string[]) =>
      Math.hypot(
        ...(leakUncertainty?.budget ?? [])
          .filter((line) => sources.includes(line.source))
          .map((line) => line.contribution),
      )
    halfPercent(of('volume'), byHand.volume)
    halfPercent(of('start-pressure', 'end-pressure'), byHand.pressure)
    halfPercent(of('start-temperature', 'end-temperature'), byHand.temperature)
    expect(leakUncertainty?.leftOut).toEqual([])
  })

  test('gives way to what the tester states, which covers the step of the display too', () => {
    const stepped = { ...gauge, resolutionStep: 0.1 }
    const stated = { ...noStaticTestBudgetInput, pressurePa: 50, volumeRelative: 0.03 }
    const own = staticTestAccuracy({ ...worked, budgetInput: stated }, [stepped, thermometer])
    expect(own).toMatchObject({
      pressurePa: 50,
      pressureErrorPa: null,
      pressureStepPa: null,
      volumeRelative: 0.03,
      leftOut: [],
    })
    expect(staticTestAccuracy(worked, [stepped]).pressureStepPa).toBeCloseTo(100, 9) // doubles
  })

  test('adds the step that the tester states, which goes before the one of the papers', () => {
    const stepped = { ...gauge, resolutionStep: 0.1 }
    const stated = {
      ...noStaticTestBudgetInput,
      pressurePa: 50,
      resolutionPa: 20,
      resolutionK: 0.1,
    }
    const own = staticTestAccuracy({ ...worked, budgetInput: stated }, [stepped, thermometer])
    expect(own).toMatchObject({ pressurePa: 50, pressureStepPa: 20, temperatureStepK: 0.1 })
    expect(own.temperatureK).toBeCloseTo(0.05, 12) // rounding of doubles
  })

  test('takes the time for good to a second where nobody says otherwise', () => {
    expect(staticTestAccuracy({ ...worked, budgetInput: null }, instruments).timeS).toBe(1)
  })

  test('is not known where the papers say nothing, and then names what is left out', () => {
    const silent = [buildInstrument('pressure-gauge'), buildInstrument('thermometer')]
    const bare = staticTestAccuracy({ ...worked, volumeInstrumentId: null }, silent)
    expect(bare).toMatchObject({ volumeRelative: null, pressurePa: null, temperatureK: null })
    const nothing = computeStaticTest(worked, bare)
    expect([nothing.leakUncertainty, nothing.dropUncertainty]).toEqual([null, null])
    const onlyGauge = computeStaticTest(worked, staticTestAccuracy(worked, [gauge]))
    expect(onlyGauge.leakUncertainty?.leftOut).toEqual(['volume', 'temperature'])
  })

  test('holds the error of an instrument beside how well its calibration knew it', () => {
    const erring = { ...gauge, calibrations: calibrated(0.06, -0.09) }
    const known = staticTestAccuracy(worked, [erring, thermometer, volume])
    expect(known.pressureErrorPa).toBeCloseTo(90, 9) // doubles
    const { dropUncertainty } = computeStaticTest(worked, known)
    // sqrt(2 x 30^2 + 2 x 90^2 / 3) Pa, by hand: of the calibration alone it would be 42.4 Pa.
    expect(dropUncertainty?.standardUncertainty).toBeCloseTo(0.0848528, 7)
    expect(dropUncertainty?.leftOut).toEqual([])
    const permitted = { ...gauge, largestError: 0.3, calibrations: calibrated(0.06, null) }
    const byRecord = staticTestAccuracy(worked, [permitted])
    expect(byRecord.pressureErrorPa).toBeCloseTo(300, 9) // doubles
  })

  test('names the error that nobody stated of an instrument that is calibrated', () => {
    const silent = [gauge, thermometer, volume].map((one) => ({
      ...one,
      calibrations: calibrated(0.06, null),
    }))
    const { leakUncertainty, dropUncertainty } = computeStaticTest(
      worked,
      staticTestAccuracy(worked, silent),
    )
    expect(leakUncertainty?.leftOut).toEqual([
      'volume-error',
      'pressure-error',
      'temperature-error',
    ])
    expect(dropUncertainty?.leftOut).toEqual(['pressure-error'])
  })

  test('takes the largest permissible error of an instrument as rectangular', () => {
    const permitted = buildInstrument('pressure-gauge', { unit: 'kPa', largestError: 0.3 })
    const { dropUncertainty } = computeStaticTest(worked, staticTestAccuracy(worked, [permitted]))
    // sqrt 2 x 300 / sqrt 3 Pa, JCGM 100:2008, 4.3.7, by hand.
    expect(dropUncertainty?.standardUncertainty).toBeCloseTo(0.244949, 6)
    const [line] = dropUncertainty?.budget ?? []
    expect(line).toMatchObject({ source: 'start-pressure-error', distribution: 'rectangular' })
    expect(dropUncertainty?.leftOut).toEqual([])
  })

  test('makes the drop good to the root of two of a reading: 0.0424 kPa of 30 Pa each', () => {
    const { dropUncertainty } = computeStaticTest(worked, staticTestAccuracy(worked, instruments))
    // sqrt(30^2 + 30^2) Pa, JCGM 100:2008, equation (10).
    expect(dropUncertainty?.standardUncertainty).toBeCloseTo(0.0424264, 7)
  })

  test('reads the gauge in its own unit, and not one that shows no pressure', () => {
    const inBar = { ...gauge, unit: 'bar' as const, calibrations: calibrated(0.0006) }
    expect(staticTestAccuracy(worked, [inBar]).pressurePa).toBeCloseTo(30, 9) // doubles
    const strange = { ...gauge, unit: 'mm' as const }
    expect(staticTestAccuracy(worked, [strange]).pressurePa).toBeNull()
  })
})
