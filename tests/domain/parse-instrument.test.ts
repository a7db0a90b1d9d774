import { expect, test } from 'vitest'
import { instrumentKinds } from '../../src/domain/instrument.ts'
import { parseInstrument } from '../../src/domain/parse-instrument.ts'
import { unitsOfKind } from '../../src/domain/units-of-kind.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const lamp = { kind: 'lamp', number: 'L-09', name: 'Helium lamp', lampId: 'helium' }
const flat = { kind: 'optical-flat', number: 'F-09', name: 'Flat', flatToleranceUm: '0,05' }

test('reads a lamp with its lamp of the table and a flat with its tolerance', () => {
  expect(accepted(parseInstrument(lamp))).toEqual({
    ...lamp,
    serial: '',
    flatToleranceUm: null,
    range: '',
    resolution: '',
    unit: '',
    rangeFrom: null,
    rangeTo: null,
    resolutionStep: null,
    largestError: null,
  })
  expect(accepted(parseInstrument(flat))).toMatchObject({ lampId: null, flatToleranceUm: 0.05 })
  const gauge = { kind: 'pressure-gauge', number: 'G-09', name: 'Gauge', range: '0 to 400 kPa' }
  expect(accepted(parseInstrument(gauge))).toMatchObject({ lampId: null, flatToleranceUm: null })
})

test('needs the lamp of a lamp and the tolerance of a flat', () => {
  expect(faultsOf(parseInstrument({ ...lamp, lampId: '' }))).toEqual(['lampId empty'])
  expect(faultsOf(parseInstrument({ ...lamp, lampId: 'candle' }))).toEqual(['lampId not-a-choice'])
  expect(faultsOf(parseInstrument({ ...flat, flatToleranceUm: '' }))).toEqual([
    'flatToleranceUm empty',
  ])
  expect(faultsOf(parseInstrument({ ...flat, flatToleranceUm: '0' }))).toEqual([
    'flatToleranceUm below',
  ])
  expect(faultsOf(parseInstrument({ ...flat, flatToleranceUm: '5.1' }))).toEqual([
    'flatToleranceUm above',
  ])
})

test('refuses on one kind what belongs to another', () => {
  expect(faultsOf(parseInstrument({ ...lamp, flatToleranceUm: '0.05' }))).toEqual([
    'flatToleranceUm not-here',
  ])
  expect(faultsOf(parseInstrument({ ...flat, lampId: 'helium' }))).toEqual(['lampId not-here'])
})

test('refuses an instrument without kind, number or name, and unknown fields', () => {
  expect(faultsOf(parseInstrument({}))).toEqual(['kind empty', 'number empty', 'name empty'])
  expect(faultsOf(parseInstrument({ ...lamp, number: 'L'.repeat(41) }))).toEqual([
    'number too-long',
  ])
  expect(faultsOf(parseInstrument({ ...lamp, colour: 'red' }))).toEqual(['colour unknown-field'])
})

const gauge = { kind: 'pressure-gauge', number: 'G-09', name: 'Gauge' }
const numbers = { unit: 'kPa', rangeFrom: '0', rangeTo: '400', resolutionStep: '0,1' }

test('reads range, step and error with their unit', () => {
  expect(accepted(parseInstrument({ ...gauge, ...numbers, largestError: '0.4' }))).toMatchObject({
    unit: 'kPa',
    rangeFrom: 0,
    rangeTo: 400,
    resolutionStep: 0.1,
    largestError: 0.4,
  })
  expect(accepted(parseInstrument({ ...gauge, unit: 'bar', rangeTo: '4' }))).toMatchObject({
    rangeFrom: null,
    rangeTo: 4,
  })
  expect(accepted(parseInstrument({ ...gauge, unit: 'psi' }))).toMatchObject({ unit: 'psi' })
})

test('needs a unit of its kind as soon as one number is given', () => {
  for (const name of ['rangeFrom', 'rangeTo', 'resolutionStep', 'largestError']) {
    expect(faultsOf(parseInstrument({ ...gauge, [name]: '1' }))).toEqual(['unit empty'])
  }
  expect(faultsOf(parseInstrument({ ...gauge, unit: 'mm', rangeTo: '1' }))).toEqual([
    'unit not-a-choice',
  ])
  expect(faultsOf(parseInstrument({ ...gauge, unit: 'C' }))).toEqual(['unit not-a-choice'])
})

test('refuses numbers of a lamp, which has its wavelength of the table', () => {
  expect(faultsOf(parseInstrument({ ...lamp, unit: 'um', rangeTo: '1' }))).toEqual([
    'unit not-here',
    'rangeTo not-here',
  ])
})

test('refuses a range that ends where it begins, and a step or error beyond all of it', () => {
  const faults = (more: object) => faultsOf(parseInstrument({ ...gauge, ...numbers, ...more }))
  expect(faults({ rangeTo: '0' })).toEqual(['rangeTo not-above-start'])
  expect(faults({ rangeFrom: '-100' })).toEqual([])
  expect(faults({ resolutionStep: '400' })).toEqual([])
  expect(faults({ resolutionStep: '400.1' })).toEqual(['resolutionStep above'])
  expect(faults({ largestError: '401' })).toEqual(['largestError above'])
  expect(faults({ resolutionStep: '0' })).toEqual(['resolutionStep below'])
  expect(faults({ largestError: '-1' })).toEqual(['largestError below'])
  const warm = { kind: 'thermometer', number: 'T-09', name: 'T', unit: 'C', rangeTo: '60' }
  expect(faultsOf(parseInstrument({ ...warm, rangeFrom: '-273.15' }))).toEqual([])
  expect(faultsOf(parseInstrument({ ...warm, rangeFrom: '-273.2' }))).toEqual([
    'rangeFrom below-absolute-zero',
  ])
})

test('gives every kind its units, so that none is left out', () => {
  for (const kind of instrumentKinds) {
    if (kind !== 'lamp') expect(unitsOfKind[kind].length, kind).toBeGreaterThan(0)
  }
})
