import { describe, expect, test } from 'vitest'
import type { Input } from '../../src/domain/fields.ts'
import { parseUseException } from '../../src/domain/parse-use-exception.ts'
import {
  lastDayFrom,
  parseUseExceptionAnswer,
} from '../../src/domain/parse-use-exception-answer.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'
import { accepted, faultsOf } from '../support/faults-of.ts'

const today = '2026-11-25'
const context = {
  instruments: [
    buildInstrument('lamp'),
    buildInstrument('pressure-gauge', {
      calibrations: [buildCalibration({ dueOn: '2026-11-20' })],
      unit: 'kPa',
      rangeTo: 400,
    }),
    buildInstrument('thermometer', { withdrawnOn: today, calibrations: [] }),
    buildInstrument('dial-indicator', { calibrations: [buildCalibration({ asLeft: 'beyond' })] }),
  ],
  days: ['2026-11-10', today],
}
const least = { instrumentId: '3', fault: 'overdue', reason: 'the other is away' }

describe('the request for an exception', () => {
  const parse = (changes: Input = {}) => parseUseException({ ...least, ...changes }, context)

  test('names an instrument, what stands against it, and why no other is taken', () => {
    expect(accepted(parse())).toEqual({ ...least, instrumentId: 3 })
  })

  test.each([
    [{ instrumentId: '' }, 'instrumentId empty'],
    [{ instrumentId: 'G-01' }, 'instrumentId not-a-number'],
    [{ instrumentId: '99' }, 'instrumentId not-known'],
    [{ fault: '' }, 'fault empty'],
    [{ fault: 'ugly' }, 'fault not-a-choice'],
    [{ reason: ' ' }, 'reason empty'],
    [{ reason: 'too short' }, 'reason too-short'],
    [{ reason: 'x'.repeat(401) }, 'reason too-long'],
    [{ validUntil: today }, 'validUntil unknown-field'],
  ])('is refused with %o', (changes, fault) => {
    expect(faultsOf(parse(changes))).toEqual([fault])
  })

  test.each([
    ['1', 'overdue'],
    ['1', 'out-of-range'],
    ['3', 'never-calibrated'],
    ['3', 'withdrawn'],
    ['4', 'overdue'],
    ['3', 'left-beyond'],
  ])('of instrument %s is refused where it is not %s', (instrumentId, fault) => {
    expect(faultsOf(parse({ instrumentId, fault }))).toEqual(['fault no-such-fault'])
  })

  test.each([
    ['3', 'out-of-range'],
    ['4', 'withdrawn'],
    // On the day of the receipt it stood on the bench still, without a calibration.
    ['4', 'never-calibrated'],
    ['5', 'left-beyond'],
  ])('of instrument %s may be for: %s', (instrumentId, fault) => {
    expect(parse({ instrumentId, fault }).ok).toBe(true)
  })
})

describe('the answer', () => {
  const allowed = { answer: 'allowed', validUntil: today, reason: 'compared today' }
  const parse = (changes: Input = {}) => parseUseExceptionAnswer({ ...allowed, ...changes }, today)

  test('allows until a day, from today to thirty days on', () => {
    expect(accepted(parse())).toEqual(allowed)
    expect(lastDayFrom(today)).toBe('2026-12-25')
    expect(accepted(parse({ validUntil: '2026-12-25' })).validUntil).toBe('2026-12-25')
  })

  test.each([
    [{ answer: '' }, 'answer empty'],
    [{ answer: 'perhaps' }, 'answer not-a-choice'],
    [{ validUntil: '' }, 'validUntil empty'],
    [{ validUntil: '25.11.2026' }, 'validUntil not-a-date'],
    [{ validUntil: '2026-11-24' }, 'validUntil below'],
    [{ validUntil: '2026-12-26' }, 'validUntil above'],
    [{ reason: '' }, 'reason empty'],
    [{ reason: 'too short' }, 'reason too-short'],
  ])('is refused with %o', (changes, fault) => {
    expect(faultsOf(parse(changes))).toEqual([fault])
  })

  test('declines without a day, whatever stood in that field', () => {
    for (const validUntil of ['', today, 'never']) {
      expect(accepted(parse({ answer: 'declined', validUntil })).validUntil).toBeNull()
    }
  })
})
