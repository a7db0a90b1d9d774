import { describe, expect, test } from 'vitest'
import type { UseException } from '../../src/domain/use-exception.ts'
import { useOf } from '../../src/domain/use-of.ts'
import { usedException } from '../../src/domain/used-exception.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'

const answered = {
  answer: 'allowed',
  validUntil: '2026-11-30',
  reason: 'compared with G-02 today',
  byName: 'Ian Ives',
  at: '2026-11-25T08:00:00.000Z',
} as const
const allowed: UseException = {
  id: 7,
  workOrderId: 1,
  workOrderNumber: 'W-2026-0001',
  instrumentId: 3,
  instrumentNumber: 'G-01',
  fault: 'overdue',
  reason: 'the other one is away',
  askedById: 1,
  askedByName: 'Tess Turner',
  askedAt: '2026-11-25T07:00:00.000Z',
  answer: answered,
}
const use = {
  instrumentId: 3,
  fault: 'overdue',
  day: '2026-11-25',
  recordedOn: '2026-11-25',
} as const

describe('an exception', () => {
  test('is kept as it was allowed: by whom, when, and why', () => {
    expect(usedException([allowed], use)).toEqual({
      id: 7,
      fault: 'overdue',
      reason: 'compared with G-02 today',
      allowedByName: 'Ian Ives',
      allowedAt: '2026-11-25T08:00:00.000Z',
    })
  })

  test('holds on its last day, and not on the next', () => {
    expect(usedException([allowed], { ...use, day: '2026-11-30' })).toBeDefined()
    expect(usedException([allowed], { ...use, day: '2026-12-01' })).toBeUndefined()
  })

  test('covers no record that was made before it was allowed', () => {
    const dayBefore = { ...use, day: '2026-11-24', recordedOn: '2026-11-24' }
    expect(usedException([allowed], dayBefore)).toBeUndefined()
    const late = { ...allowed, answer: { ...answered, at: '2026-11-26T08:00:00.000Z' } }
    expect(usedException([late], use)).toBeUndefined()
    expect(usedException([allowed, { ...late, id: 8 }], use)?.id).toBe(7)
  })

  test('covers an earlier use that is recorded once it is allowed, and says when that was', () => {
    const backDated = usedException([allowed], { ...use, day: '2026-11-24' })
    expect(backDated?.allowedAt).toBe('2026-11-25T08:00:00.000Z')
    // Recorded after its last day, of a day within it.
    const afterwards = { ...use, day: '2026-11-30', recordedOn: '2026-12-02' }
    expect(usedException([allowed], afterwards)).toBeDefined()
  })

  test('is for one instrument and one fault', () => {
    expect(usedException([allowed], { ...use, instrumentId: 4 })).toBeUndefined()
    expect(usedException([allowed], { ...use, fault: 'withdrawn' })).toBeUndefined()
  })

  test('is none before it is answered, nor where it was declined', () => {
    const declined = { ...answered, answer: 'declined', validUntil: null } as const
    expect(usedException([{ ...allowed, answer: null }], use)).toBeUndefined()
    expect(usedException([{ ...allowed, answer: declined }], use)).toBeUndefined()
    expect(usedException([], use)).toBeUndefined()
  })

  test('is the newest of several; a later refusal does not take back what was allowed', () => {
    const second = { ...allowed, id: 8 }
    const declined = { ...answered, answer: 'declined', validUntil: null } as const
    expect(usedException([allowed, second], use)?.id).toBe(8)
    expect(usedException([allowed, { ...second, answer: declined }], use)?.id).toBe(7)
  })
})

describe('the label kept with a record', () => {
  const overdue = buildInstrument('pressure-gauge', {
    calibrations: [buildCalibration({ dueOn: '2026-10-01' })],
    unit: 'kPa',
    rangeFrom: 0,
    rangeTo: 400,
  })
  const exceptions = [allowed]
  const on = { day: use.day, recordedOn: use.recordedOn }

  test('carries the exception that the use needed', () => {
    expect(useOf(overdue, { ...on, exceptions })).toMatchObject({
      status: 'overdue',
      dueOn: '2026-10-01',
      exception: { id: 7, allowedByName: 'Ian Ives' },
    })
    expect(useOf(overdue, on)).not.toHaveProperty('exception')
  })

  test('carries none on a day on which it needed none', () => {
    expect(useOf(overdue, { ...on, day: '2026-10-01', exceptions })).not.toHaveProperty('exception')
  })

  test('carries that of the range where the label is good', () => {
    const good = buildInstrument('pressure-gauge', { unit: 'kPa', rangeFrom: 0, rangeTo: 400 })
    const beyond = [{ ...allowed, fault: 'out-of-range' }] as const
    const by = { ...on, exceptions: beyond }
    const readings = { base: 'Pa', ways: [[410_000, 400_000]] } as const
    expect(useOf(good, { ...by, readings }).exception).toMatchObject({ fault: 'out-of-range' })
    const within = { base: 'Pa', ways: [[390_000, 380_000]] } as const
    expect(useOf(good, { ...by, readings: within })).not.toHaveProperty('exception')
  })
})
