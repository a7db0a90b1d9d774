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

test('passes over one that found it beyond and says nothing of putting it right', () => {
  const before = [at(1, '2025-01-10'), at(2, '2025-12-20', { asFound: 'beyond' })]
  expect(doubtWindow([...before, bad], bad)?.from).toBe('2025-01-10')
})

test('takes one for good that found it within, or that says nothing at all', () => {
  for (const asFound of ['within', 'not-stated'] as const) {
    const before = at(2, '2025-12-20', { asFound })
    expect(doubtWindow([before, bad], bad)?.from).toBe('2025-12-20')
  }
})

test('doubts nothing where it was neither found nor left beyond', () => {
  for (const asFound of ['within', 'not-stated'] as const) {
    for (const asLeft of ['within', 'not-stated'] as const) {
      const fine = at(3, '2026-06-01', { asFound, asLeft })
      expect(doubtWindow([fine], fine)).toBeNull()
    }
  }
})

test.each([
  ['left it beyond', { asFound: 'beyond', asLeft: 'beyond' }],
  ['found it beyond and says no more', { asFound: 'beyond' }],
] as const)('goes on after one that %s, until the next good one', (_, states) => {
  const good = at(1, '2025-01-10')
  const left = at(9, '2026-06-01', states)
  expect(doubtWindow([good, left], left)).toEqual({ from: '2025-01-10', to: null })
  const again = at(10, '2026-07-01', { asFound: 'beyond', asLeft: 'beyond' })
  const mended = at(11, '2026-08-01', { asFound: 'beyond', asLeft: 'within' })
  const later = at(12, '2026-09-01', { asLeft: 'within' })
  const all = [later, mended, again, left, good]
  expect(doubtWindow(all, left)).toEqual({ from: '2025-01-10', to: '2026-08-01' })
  expect(doubtWindow(all, mended)).toEqual({ from: '2025-01-10', to: '2026-08-01' })
})

test('ends on the day itself where it was put right later that day', () => {
  const left = at(9, '2026-06-01', { asFound: 'beyond', asLeft: 'beyond' })
  const mended = at(10, '2026-06-01', { asFound: 'beyond', asLeft: 'within' })
  expect(doubtWindow([mended, left], left)).toEqual({ from: null, to: '2026-06-01' })
})

test('begins with the day of one that found it within and left it beyond', () => {
  const spoilt = at(9, '2026-06-01', { asFound: 'within', asLeft: 'beyond' })
  const window = { from: '2026-06-01', to: null }
  expect(doubtWindow([at(1, '2025-01-10'), spoilt], spoilt)).toEqual(window)
})

test('reaches back where one left it beyond and does not say how it was found', () => {
  const left = at(9, '2026-06-01', { asLeft: 'beyond' })
  expect(doubtWindow([at(1, '2025-01-10'), left], left)?.from).toBe('2025-01-10')
})
