import { describe, expect, test } from 'vitest'
import { calibrationOn, calibrationStatus } from '../../src/domain/calibration-status.ts'
import { instrumentUse } from '../../src/domain/instrument-use.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'

const first = buildCalibration({ id: 1, calibratedOn: '2025-03-01', dueOn: '2026-03-01' })
const second = buildCalibration({
  id: 2,
  calibratedOn: '2026-04-10',
  dueOn: '2027-04-10',
  certificateNumber: 'K-2',
})
const gauge = buildInstrument('pressure-gauge', { calibrations: [first, second] })

describe('calibration status', () => {
  test('is never calibrated before the first calibration, and in calibration from its day on', () => {
    expect(calibrationStatus(gauge, '2025-02-28')).toBe('never-calibrated')
    expect(calibrationStatus(gauge, '2025-03-01')).toBe('in-calibration')
    expect(calibrationStatus(buildInstrument('lamp', { calibrations: [] }), '2026-01-01')).toBe(
      'never-calibrated',
    )
  })

  test('still holds on the due day and is overdue the day after', () => {
    expect(calibrationStatus(gauge, '2026-03-01')).toBe('in-calibration')
    expect(calibrationStatus(gauge, '2026-03-02')).toBe('overdue')
  })

  test('stays overdue until the next calibration, which repairs nothing before it', () => {
    expect(calibrationStatus(gauge, '2026-04-09')).toBe('overdue')
    expect(calibrationStatus(gauge, '2026-04-10')).toBe('in-calibration')
  })

  test('is withdrawn from that day on, whatever the calibration says', () => {
    const withdrawn = { ...gauge, withdrawnOn: '2026-06-01' }
    expect(calibrationStatus(withdrawn, '2026-05-31')).toBe('in-calibration')
    expect(calibrationStatus(withdrawn, '2026-06-01')).toBe('withdrawn')
  })

  test('is beyond from a calibration that left it so, until one that leaves it good', () => {
    const beyond = { calibratedOn: '2026-02-01', dueOn: '2027-02-01' } as const
    for (const states of [
      { asFound: 'beyond', asLeft: 'beyond' },
      { asFound: 'within', asLeft: 'beyond' },
      { asFound: 'beyond', asLeft: 'not-stated' },
    ] as const) {
      const left = buildCalibration({ id: 3, ...beyond, ...states })
      const wrong = { ...gauge, calibrations: [first, left, second] }
      expect(calibrationStatus(wrong, '2026-01-31')).toBe('in-calibration')
      expect(calibrationStatus(wrong, '2026-02-01')).toBe('left-beyond')
      expect(calibrationStatus(wrong, '2026-04-10')).toBe('in-calibration')
    }
    const mended = buildCalibration({ ...beyond, asFound: 'beyond', asLeft: 'within' })
    const right = { ...gauge, calibrations: [first, mended] }
    expect(calibrationStatus(right, '2026-02-01')).toBe('in-calibration')
  })

  test('says what is known to be wrong before what is only overdue, and withdrawn before both', () => {
    const left = buildCalibration({ dueOn: '2026-03-01', asLeft: 'beyond' })
    const wrong = { ...gauge, calibrations: [left] }
    expect(calibrationStatus(wrong, '2026-03-02')).toBe('left-beyond')
    const withdrawn = { ...wrong, withdrawnOn: '2026-03-02' }
    expect(calibrationStatus(withdrawn, '2026-03-02')).toBe('withdrawn')
  })

  test('goes by the newest calibration on or before the day, in whatever order they stand', () => {
    const turned = { ...gauge, calibrations: [second, first] }
    expect(calibrationOn(turned, '2026-11-25')).toBe(second)
    expect(calibrationOn(turned, '2026-01-01')).toBe(first)
    expect(calibrationOn(turned, '2025-01-01')).toBeUndefined()
  })

  test('goes by the later entry where two calibrations share a day', () => {
    const again = buildCalibration({ id: 3, calibratedOn: '2026-04-10', dueOn: '2026-10-10' })
    expect(calibrationOn({ ...gauge, calibrations: [second, again] }, '2026-11-25')).toBe(again)
  })
})

test('the use of an instrument keeps what its label said on that day', () => {
  expect(instrumentUse(gauge, '2026-03-15')).toEqual({
    instrumentId: 3,
    number: 'G-01',
    serial: '',
    name: 'pressure-gauge',
    kind: 'pressure-gauge',
    status: 'overdue',
    dueOn: '2026-03-01',
    certificateNumber: 'K-1',
  })
  expect(instrumentUse(gauge, '2026-11-25').certificateNumber).toBe('K-2')
})

test('the use of an instrument before its first calibration has no due day and no certificate', () => {
  const use = instrumentUse(gauge, '2025-01-01')
  expect([use.status, use.dueOn, use.certificateNumber]).toEqual(['never-calibrated', null, null])
})
