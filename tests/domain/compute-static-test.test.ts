import { describe, expect, test } from 'vitest'
import { completeStaticTest } from '../../src/domain/complete-static-test.ts'
import { computeStaticTest, type StaticTestFigures } from '../../src/domain/compute-static-test.ts'
import { buildCalibration, buildInstrument, buildInstruments } from '../support/build-instrument.ts'
import { buildStaticTest, builtAccuracy } from '../support/build-static-test.ts'

const compute = (test: StaticTestFigures) => computeStaticTest(test, builtAccuracy)

describe('computed columns of a static test', () => {
  test('give the leak that the usual limit of the assembly integrity test means', () => {
    const computed = compute({
      ...buildStaticTest(),
      startPressureKPaAbs: 270,
      endPressureKPaAbs: 256,
      volumeL: 28,
    })
    expect(computed.pressureDropKPa).toBe(14)
    // Q = V dp / t = 0.028 m3 x 14000 Pa / 300 s, by hand from Boyle's law.
    expect(computed.leakPaM3PerS).toBeCloseTo(1.306667, 6) // digits of the hand calculation
    expect(computed.uncompensatedPaM3PerS).toBeCloseTo(1.306667, 6) // the same
    expect(computed.method).toBe('leak/pressure-change 1')
  })

  test('tell a fall by cooling from a leak', () => {
    // At constant volume p/T is constant without a leak: 293.15 K to 292.15 K.
    const endPressureKPaAbs = (271 * 292.15) / 293.15
    const cooled = compute({
      ...buildStaticTest(),
      endPressureKPaAbs,
      endTemperatureC: 19,
    })
    expect(cooled.leakPaM3PerS).toBeCloseTo(0, 12) // rounding of doubles
    expect(cooled.uncompensatedPaM3PerS).toBeGreaterThan(0.006)
    expect(cooled.pressureDropKPa).toBeGreaterThan(0.9)
  })

  test('give a rise as a negative drop and a negative leak', () => {
    const risen = compute({ ...buildStaticTest(), endPressureKPaAbs: 272 })
    expect(risen.pressureDropKPa).toBe(-1)
    expect(risen.leakPaM3PerS).toBeLessThan(0)
  })
})

describe('completing a test', () => {
  const context = { instruments: buildInstruments(), now: '2027-01-16T12:00:00.000Z' }

  test('adds its figures and the instruments of the day the hold began', () => {
    const test = buildStaticTest({
      startedAt: '2027-01-16T00:00:00.000Z',
      thermometerInstrumentId: 4,
    })
    const complete = completeStaticTest(test, context)
    expect([complete.gauge.number, complete.gauge.status]).toEqual(['G-01', 'overdue'])
    expect(complete.thermometer?.number).toBe('T-01')
    expect(complete.pressureDropKPa).toBe(1)
  })

  test('keeps what the instruments of the day say about the uncertainty', () => {
    const gauge = buildInstrument('pressure-gauge', {
      unit: 'kPa',
      calibrations: [buildCalibration({ expandedUncertainty: 0.06, coverageFactor: 2 })],
    })
    const volume = buildInstrument('volume')
    const instruments = [...buildInstruments().filter((one) => one.id !== gauge.id), gauge, volume]
    const held = buildStaticTest({ volumeInstrumentId: volume.id, budgetInput: null })
    const complete = completeStaticTest(held, { ...context, instruments })
    expect(complete.volume?.number).toBe('V-01')
    expect(complete.dropUncertainty?.standardUncertainty).toBeCloseTo(0.0424264, 7) // √2 x 30 Pa
    expect(complete.leakUncertainty?.leftOut).toEqual(['volume', 'pressure-error', 'temperature'])
  })

  test('leaves the thermometer out where there was none', () => {
    expect(completeStaticTest(buildStaticTest(), context).thermometer).toBeNull()
  })

  test('throws outside its context', () => {
    const stranger = buildStaticTest({ gaugeInstrumentId: 99 })
    expect(() => completeStaticTest(stranger, context)).toThrow('of its context, got id 99')
  })
})
