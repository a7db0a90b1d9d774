import { expect, test } from 'vitest'
import { parseInstrument } from '../../src/domain/parse-instrument.ts'
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
