import { expect, test } from 'vitest'
import {
  calibrationNoticeDays,
  instrumentStanding,
  instrumentStandings,
} from '../../src/domain/instrument-standing.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'

const dueOn = (day: string, number = 'L-01') =>
  buildInstrument('lamp', { number, calibrations: [buildCalibration({ dueOn: day })] })

test('says from thirty days before that a calibration runs out', () => {
  expect(calibrationNoticeDays).toBe(30)
  const standing = (day: string) => instrumentStanding(dueOn('2026-12-25'), day)
  expect(standing('2026-11-24')).toMatchObject({ dueInDays: 31, isDueSoon: false })
  expect(standing('2026-11-25')).toMatchObject({ dueInDays: 30, isDueSoon: true })
  expect(standing('2026-12-25')).toMatchObject({ dueInDays: 0, isDueSoon: true })
  expect(standing('2026-12-26')).toMatchObject({ dueInDays: null, isDueSoon: false })
})

test('counts whole days over the change of the clocks and of the year', () => {
  expect(instrumentStanding(dueOn('2027-03-29'), '2026-12-31').dueInDays).toBe(88)
})

test('puts what needs a look first and what is withdrawn last', () => {
  const withdrawn = { number: 'A', withdrawnOn: '2026-06-01' }
  const order = instrumentStandings(
    [
      buildInstrument('lamp', withdrawn),
      dueOn('2027-05-01', 'B'),
      dueOn('2026-12-01', 'C'),
      buildInstrument('lamp', { number: 'D', calibrations: [] }),
      dueOn('2026-11-01', 'E'),
      dueOn('2026-10-01', 'F'),
      dueOn('2026-12-01', 'AA'),
    ],
    '2026-11-25',
  )
  expect(order.map((one) => one.use.number)).toEqual(['F', 'E', 'D', 'AA', 'C', 'B', 'A'])
})
