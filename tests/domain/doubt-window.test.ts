import { expect, test } from 'vitest'
import { doubtWindow } from '../../src/domain/doubt-window.ts'
import type { Calibration } from '../../src/domain/instrument.ts'
import { buildCalibration } from '../support/build-instrument.ts'

const at = (id: number, calibratedOn: string, changes: Partial<Calibration> = {}) =>
  buildCalibration({ id, calibratedOn, ...changes })
const bad = at(9, '2026-06-01', { asFound: 'beyond', asLeft: 'within' })

test('reaches from the last good calibration to the day of the bad one', () => {
  const before = [at(1, '2025-01-10'), at(2, '2025-12-20', { asLeft: 'within' })]
  expect(doubtWindow([...before, bad], bad)).toEqual({ from: '2025-12-20', to: '2026-06-01' })
})

test('passes over an earlier one that left the instrument beyond', () => {
  const before = [at(1, '2025-01-10'), at(2, '2025-12-20', { asLeft: 'beyond' })]
  expect(doubtWindow([...before, bad], bad)?.from).toBe('2025-01-10')
})

test('reaches back to the first use where nothing earlier was good', () => {
  expect(doubtWindow([bad], bad)).toEqual({ from: null, to: '2026-06-01' })
  const left = at(2, '2025-12-20', { asFound: 'beyond', asLeft: 'beyond' })
  expect(doubtWindow([left, bad], bad)?.from).toBeNull()
})

test('asks no later calibration, whatever the order of the list', () => {
  const later = at(10, '2026-07-01', { asLeft: 'within' })
  expect(doubtWindow([later, bad, at(1, '2025-01-10')], bad)?.from).toBe('2025-01-10')
})

test('takes one of the same day only where it was recorded first', () => {
  const first = at(8, '2026-06-01', { asLeft: 'within' })
  const second = at(11, '2026-06-01', { asLeft: 'within' })
  expect(doubtWindow([first, bad], bad)?.from).toBe('2026-06-01')
  expect(doubtWindow([bad, second], bad)?.from).toBeNull()
})

test('doubts nothing where the instrument was found within, or nothing was said', () => {
  for (const asFound of ['within', 'not-stated'] as const) {
    const fine = at(3, '2026-06-01', { asFound, asLeft: 'beyond' })
    expect(doubtWindow([fine], fine)).toBeNull()
  }
})
