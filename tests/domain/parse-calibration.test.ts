import { expect, test } from 'vitest'
import { calibrationUnit } from '../../src/domain/calibration-unit.ts'
import type { Input } from '../../src/domain/fields.ts'
import { parseCalibration } from '../../src/domain/parse-calibration.ts'
import { parseWithdrawal } from '../../src/domain/parse-withdrawal.ts'
import { buildInstrument } from '../support/build-instrument.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const today = '2026-11-25'
const gauge = buildInstrument('pressure-gauge', { unit: 'kPa', largestError: 0.5 })
const parse = (input: Input, instrument = gauge, seenUnit: string = calibrationUnit(instrument)) =>
  parseCalibration(input, { today, instrument, seenUnit })
const good = { calibratedOn: '2026-11-25', dueOn: '2026-11-26', certificateNumber: 'K-7' }

test('reads a calibration made today and due tomorrow', () => {
  expect(accepted(parse(good))).toEqual({
    ...good,
    laboratory: '',
    asFound: 'not-stated',
    asFoundError: null,
    asLeft: 'not-stated',
    asLeftError: null,
    expandedUncertainty: null,
    coverageFactor: null,
    note: '',
  })
})

test('refuses a calibration made tomorrow, or before anyone kept records', () => {
  const made = (calibratedOn: string) =>
    faultsOf(parse({ ...good, calibratedOn, dueOn: '2030-01-01' }))
  expect(made('2026-11-26')).toEqual(['calibratedOn above'])
  expect(made('1989-12-31')).toEqual(['calibratedOn below'])
  expect(made('1990-01-01')).toEqual([])
})

test('refuses a due day that is not later than the calibration', () => {
  const due = (dueOn: string) => faultsOf(parse({ ...good, dueOn }))
  expect(due('2026-11-25')).toEqual(['dueOn not-later'])
  expect(due('2026-11-24')).toEqual(['dueOn not-later'])
  expect(due('2026-02-30')).toEqual(['dueOn not-a-date'])
})

test('says once what is missing, and refuses unknown fields', () => {
  expect(faultsOf(parse({}))).toEqual([
    'calibratedOn empty',
    'dueOn empty',
    'certificateNumber empty',
  ])
  expect(faultsOf(parse({ ...good, by: 'me' }))).toEqual(['by unknown-field'])
})

test('refuses numbers that were typed beside another unit than stands now', () => {
  const numbers = { asFoundError: '0.1', asLeftError: '0.1', expandedUncertainty: '0.2' }
  const faults = ['asFoundError', 'asLeftError', 'expandedUncertainty']
  for (const seen of ['bar', '']) {
    expect(faultsOf(parse({ ...good, ...numbers }, gauge, seen)), seen).toEqual(
      faults.map((name) => `${name} amended-meanwhile`),
    )
  }
  expect(faultsOf(parse({ ...good, ...numbers }, gauge, 'kPa'))).toEqual([])
  expect(faultsOf(parse(good, gauge, 'bar'))).toEqual([])
})

test('reads what was found and left, and an uncertainty with its factor', () => {
  const stated = { ...good, laboratory: ' House ', asFound: 'beyond', asFoundError: '-0,7' }
  const all = { ...stated, asLeft: 'within', asLeftError: '0.1', expandedUncertainty: '0.2' }
  expect(accepted(parse({ ...all, coverageFactor: '2.1', note: 'adjusted' }))).toMatchObject({
    laboratory: 'House',
    asFound: 'beyond',
    asFoundError: -0.7,
    asLeft: 'within',
    asLeftError: 0.1,
    expandedUncertainty: 0.2,
    coverageFactor: 2.1,
    note: 'adjusted',
  })
  expect(accepted(parse(all))).toMatchObject({ expandedUncertainty: 0.2, coverageFactor: 2 })
  // The form offers a factor: alone it says nothing.
  expect(accepted(parse({ ...good, coverageFactor: '2' }))).toMatchObject({ coverageFactor: null })
})

test('refuses an error beyond what the instrument may have unless that is said', () => {
  const found = (asFound: string, asFoundError: string) =>
    faultsOf(parse({ ...good, asFound, asFoundError }))
  expect(found('within', '0.5')).toEqual([])
  expect(found('within', '-0.5')).toEqual([])
  expect(found('within', '0.51')).toEqual(['asFound error-beyond'])
  expect(found('not-stated', '-0.51')).toEqual(['asFound error-beyond'])
  expect(found('beyond', '0.51')).toEqual([])
  expect(faultsOf(parse({ ...good, asLeftError: '0.51' }))).toEqual(['asLeft error-beyond'])
  const plain = buildInstrument('pressure-gauge', { unit: 'kPa' })
  expect(faultsOf(parse({ ...good, asFound: 'within', asFoundError: '9' }, plain))).toEqual([])
})

test('refuses numbers that nobody could tell the unit of', () => {
  const numbers = { asFoundError: '1', asLeftError: '1', expandedUncertainty: '1' }
  expect(faultsOf(parse({ ...good, ...numbers }, buildInstrument('lamp')))).toEqual([
    'asFoundError no-unit',
    'asLeftError no-unit',
    'expandedUncertainty no-unit',
  ])
  // A flat states its tolerance in µm.
  expect(
    faultsOf(parse({ ...good, asFoundError: '0.02' }, buildInstrument('optical-flat'))),
  ).toEqual([])
})

test('bounds the uncertainty and its factor', () => {
  const faults = (more: Input) => faultsOf(parse({ ...good, expandedUncertainty: '0.1', ...more }))
  expect(faults({ expandedUncertainty: '0' })).toEqual(['expandedUncertainty below'])
  expect(faults({ coverageFactor: '0.99' })).toEqual(['coverageFactor below'])
  expect(faults({ coverageFactor: '1' })).toEqual([])
  expect(faults({ coverageFactor: '13' })).toEqual([])
  expect(faults({ coverageFactor: '13.1' })).toEqual(['coverageFactor above'])
  expect(faults({ asFound: 'fine' })).toEqual(['asFound not-a-choice'])
})

test('takes an instrument out of use only with a reason', () => {
  expect(accepted(parseWithdrawal({ reason: ' dropped ' }))).toEqual({ reason: 'dropped' })
  expect(faultsOf(parseWithdrawal({ reason: ' ' }))).toEqual(['reason empty'])
  expect(faultsOf(parseWithdrawal({ reason: 'x'.repeat(401) }))).toEqual(['reason too-long'])
})

test('a flat that departs further than it may is not taken as within', () => {
  // 0.05 um is permitted, in whatever unit its numbers are.
  for (const [unit, beyond, within] of [
    ['', '0.06', '0.05'],
    ['um', '0.06', '0.05'],
    ['mm', '0.00006', '0.00005'],
  ] as const) {
    const flat = buildInstrument('optical-flat', { unit, flatToleranceUm: 0.05 })
    const faults = (asFoundError: string, asFound: string) =>
      faultsOf(parse({ ...good, asFoundError, asFound }, flat))
    expect(faults(beyond, 'within'), unit).toEqual(['asFound error-beyond'])
    expect(faults(beyond, 'beyond'), unit).toEqual([])
    expect(faults(within, 'within'), unit).toEqual([])
  }
})
