import { describe, expect, test } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import { parseStaticTestBody } from '../../src/domain/parse-static-test-body.ts'
import { noStaticTestBudgetInput } from '../../src/domain/static-test.ts'
import { buildInstrument, buildInstruments } from '../support/build-instrument.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const context = {
  instruments: buildInstruments(),
  receivedAt: '2026-11-01T14:00:00.000Z',
  now: '2026-11-25T10:00:00.000Z',
}
const start = { timeS: 100, pressureKPaAbs: 271.325, temperatureC: 21 }
const end = { timeS: 700, pressureKPaAbs: 268.1, temperatureC: 20.5 }
const least = { volumeL: 5, start, end, gaugeInstrumentId: 3 }
const parse = (changes: Input = {}) => parseStaticTestBody({ ...least, ...changes }, context)

test('reads the least test: the hold lasts from one time to the other and ended just now', () => {
  expect(accepted(parse())).toEqual({
    section: 'whole',
    typed: {
      startPressure: '271.325',
      endPressure: '268.1',
      pressureUnit: 'kPa',
      pressureReference: 'absolute',
      barometer: '',
    },
    startPressureKPaAbs: 271.325,
    endPressureKPaAbs: 268.1,
    barometerKPa: 101.325,
    startTemperatureC: 21,
    endTemperatureC: 20.5,
    referenceTemperatureC: 20,
    durationS: 600,
    startedAt: '2026-11-25T09:50:00.000Z',
    volumeL: 5,
    stabilisationS: null,
    leakPlace: null,
    expansion: null,
    gaugeInstrumentId: 3,
    thermometerInstrumentId: null,
    volumeInstrumentId: null,
    budgetInput: noStaticTestBudgetInput,
    note: '',
    replacesId: null,
    reason: '',
  })
})

test('refuses each missing field by its path', () => {
  expect(faultsOf(parseStaticTestBody({}, context))).toEqual([
    'start empty',
    'end empty',
    'volumeL empty',
    'gaugeInstrumentId empty',
  ])
  expect(faultsOf(parse({ end: {} }))).toEqual([
    'end.timeS empty',
    'end.pressureKPaAbs empty',
    'end.temperatureC empty',
  ])
})

test('refuses unknown fields by name, within the ends too', () => {
  expect(faultsOf(parse({ unit: 'bar', start: { ...start, pressureKPa: 1 } }))).toEqual([
    'unit unknown-field',
    'start.pressureKPa unknown-field',
  ])
})

describe('times', () => {
  const endingAt = (timeS: unknown) => faultsOf(parse({ end: { ...end, timeS } }))

  test('end later than they start', () => {
    expect(endingAt(100)).toEqual(['end.timeS not-later'])
    expect(endingAt(99)).toEqual(['end.timeS not-later'])
    expect(endingAt(101)).toEqual([])
  })

  test('are at least a second and at most a week apart', () => {
    expect(endingAt(100.5)).toEqual(['end.timeS below'])
    expect(endingAt(100 + 604_800)).toEqual([])
    expect(endingAt(101 + 604_800)).toEqual(['end.timeS above'])
  })

  test('are not compared where one of them is faulty', () => {
    expect(endingAt('soon')).toEqual(['end.timeS not-a-number'])
  })

  test('say when the hold began, where it is stated', () => {
    const stated = accepted(parse({ startedAt: '2026-11-24T23:30:00-02:00' }))
    expect(stated.startedAt).toBe('2026-11-25T01:30:00.000Z')
    expect(faultsOf(parse({ startedAt: '2026-11-26T00:00:00Z' }))).toEqual(['startedAt above'])
    expect(faultsOf(parse({ startedAt: '2026-10-31T23:00:00Z' }))).toEqual(['startedAt below'])
    for (const local of ['2026-11-24T23:30', '2026-11-24T23:30:00']) {
      expect(faultsOf(parse({ startedAt: local }))).toEqual(['startedAt no-offset'])
    }
  })
})

test('bounds pressures and temperatures by their path', () => {
  const faulty = parse({
    start: { ...start, pressureKPaAbs: -1 },
    end: { ...end, temperatureC: -274 },
    referenceTemperatureC: 2001,
  })
  expect(faultsOf(faulty)).toEqual([
    'start.pressureKPaAbs below',
    'end.temperatureC below-absolute-zero',
    'referenceTemperatureC above',
  ])
})

test('takes a temperature beyond the window of the trade where the program confirms it', () => {
  const hot = { end: { ...end, temperatureC: 451 } }
  expect(faultsOf(parse(hot))).toEqual(['end.temperatureC beyond-window'])
  expect(faultsOf(parse({ ...hot, confirmBeyondWindow: true }))).toEqual([])
})

test('takes the uncertainties of the calculator, and a calibrated volume', () => {
  const uncertainties = { volumeRelative: 0.02, pressurePa: 30, temperatureK: 0.05, timeS: 1 }
  expect(accepted(parse({ uncertainties })).budgetInput).toEqual(uncertainties)
  const withVolume = { ...context, instruments: [...buildInstruments(), buildInstrument('volume')] }
  const held = parseStaticTestBody({ ...least, volumeInstrumentId: 12 }, withVolume)
  expect(accepted(held).volumeInstrumentId).toBe(12)
  expect(faultsOf(parse({ volumeInstrumentId: 3 }))).toEqual([
    'volumeInstrumentId wrong-instrument',
  ])
  // Traces are not kept yet: refused by name, not dropped.
  expect(faultsOf(parse({ trace: [] }))).toEqual(['trace unknown-field'])
})

test('keeps the reference temperature that was asked for', () => {
  expect(accepted(parse({ referenceTemperatureC: 0 })).referenceTemperatureC).toBe(0)
})
