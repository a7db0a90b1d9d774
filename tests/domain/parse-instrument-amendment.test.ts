import { describe, expect, test } from 'vitest'
import { parseInstrumentAmendment } from '../../src/domain/parse-instrument-amendment.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'

const gauge = buildInstrument('pressure-gauge', { unit: '', calibrations: [] })
const typed = {
  range: '0 to 1000 kPa',
  unit: 'kPa',
  rangeFrom: '0',
  rangeTo: '1000',
  resolutionStep: '0.5',
  largestError: '2.5',
  amendReason: 'From its data sheet',
}
const faultsOf = (input: Record<string, string>, of = gauge) => {
  const parsed = parseInstrumentAmendment({ ...typed, ...input }, of)
  return parsed.ok ? [] : parsed.faults.map((one) => `${one.field} ${one.kind}`)
}

test('reads every number anew, and why', () => {
  const parsed = parseInstrumentAmendment(typed, gauge)
  expect(parsed).toEqual({
    ok: true,
    value: {
      flatToleranceUm: null,
      range: '0 to 1000 kPa',
      resolution: '',
      unit: 'kPa',
      rangeFrom: 0,
      rangeTo: 1000,
      resolutionStep: 0.5,
      largestError: 2.5,
      reason: 'From its data sheet',
    },
  })
})

describe('what is refused', () => {
  test.each([
    ['no reason', { amendReason: '' }, 'amendReason empty'],
    ['a short reason', { amendReason: 'wrong' }, 'amendReason too-short'],
    ['a number without a unit', { unit: '' }, 'unit empty'],
    ['a range upside down', { rangeFrom: '2000' }, 'rangeTo not-above-start'],
    ['a tolerance of what is no flat', { flatToleranceUm: '0.1' }, 'flatToleranceUm not-here'],
    ['a word for a number', { largestError: 'small' }, 'largestError not-a-number'],
    ['a field that there is not', { colour: 'red' }, 'colour unknown-field'],
  ])('%s', (_, input, fault) => {
    expect(faultsOf(input)).toContain(fault)
  })

  test('another unit, once a calibration states a number in the one that stands', () => {
    const calibrations = [buildCalibration({ expandedUncertainty: 0.8 })]
    const calibrated = { ...gauge, unit: 'kPa', calibrations } as const
    expect(faultsOf({ unit: 'bar' }, calibrated)).toEqual(['unit unit-in-use'])
    expect(faultsOf({ unit: 'kPa' }, calibrated)).toEqual([])
    const bare = { ...calibrated, calibrations: [buildCalibration({ expandedUncertainty: null })] }
    expect(faultsOf({ unit: 'bar' }, bare)).toEqual([])
  })
})
