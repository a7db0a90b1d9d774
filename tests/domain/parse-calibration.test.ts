import { expect, test } from 'vitest'
import { parseCalibration } from '../../src/domain/parse-calibration.ts'
import { parseWithdrawal } from '../../src/domain/parse-withdrawal.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const today = '2026-11-25'
const good = { calibratedOn: '2026-11-25', dueOn: '2026-11-26', certificateNumber: 'K-7' }

test('reads a calibration made today and due tomorrow', () => {
  expect(accepted(parseCalibration(good, { today }))).toEqual(good)
})

test('refuses a calibration made tomorrow, or before anyone kept records', () => {
  const made = (calibratedOn: string) =>
    faultsOf(parseCalibration({ ...good, calibratedOn, dueOn: '2030-01-01' }, { today }))
  expect(made('2026-11-26')).toEqual(['calibratedOn above'])
  expect(made('1989-12-31')).toEqual(['calibratedOn below'])
  expect(made('1990-01-01')).toEqual([])
})

test('refuses a due day that is not later than the calibration', () => {
  const due = (dueOn: string) => faultsOf(parseCalibration({ ...good, dueOn }, { today }))
  expect(due('2026-11-25')).toEqual(['dueOn not-later'])
  expect(due('2026-11-24')).toEqual(['dueOn not-later'])
  expect(due('2026-02-30')).toEqual(['dueOn not-a-date'])
})

test('says once what is missing, and refuses unknown fields', () => {
  expect(faultsOf(parseCalibration({}, { today }))).toEqual([
    'calibratedOn empty',
    'dueOn empty',
    'certificateNumber empty',
  ])
  expect(faultsOf(parseCalibration({ ...good, by: 'me' }, { today }))).toEqual(['by unknown-field'])
})

test('takes an instrument out of use only with a reason', () => {
  expect(accepted(parseWithdrawal({ reason: ' dropped ' }))).toEqual({ reason: 'dropped' })
  expect(faultsOf(parseWithdrawal({ reason: ' ' }))).toEqual(['reason empty'])
  expect(faultsOf(parseWithdrawal({ reason: 'x'.repeat(401) }))).toEqual(['reason too-long'])
})
