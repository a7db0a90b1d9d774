import { describe, expect, test } from 'vitest'
import { checkRange } from '../../src/domain/check-range.ts'
import { openFields } from '../../src/domain/fields.ts'
import { gaugeReadings } from '../../src/domain/gauge-readings.ts'
import type { Instrument } from '../../src/domain/instrument.ts'
import { type InstrumentReadings, rangeHolds } from '../../src/domain/range-holds.ts'
import type { UseException } from '../../src/domain/use-exception.ts'
import { buildCalibration, buildInstrument } from '../support/build-instrument.ts'
import { buildStaticTest } from '../support/build-static-test.ts'

const day = '2026-11-25'
const gauge = (changes: Partial<Instrument> = {}): Instrument =>
  buildInstrument('pressure-gauge', { unit: 'bar', rangeFrom: 0, rangeTo: 4, ...changes })
const showing = (...kPa: number[]): InstrumentReadings => ({
  base: 'Pa',
  ways: [kPa.map((one) => one * 1000)],
})

describe('the range of an instrument', () => {
  test.each([
    ['both ends of it', gauge(), showing(0, 400), true],
    ['a start above it', gauge(), showing(400.1, 300), false],
    ['an end below it', gauge(), showing(300, -0.1), false],
    ['anything above where only its start is said', gauge({ rangeTo: null }), showing(9e5), true],
    ['nothing below where only its start is said', gauge({ rangeTo: null }), showing(-1), false],
    ['anything where it says no unit', gauge({ unit: '' }), showing(900), true],
    ['anything of another quantity', gauge({ unit: 'mm' }), showing(900), true],
    ['what is within it in psi', gauge({ unit: 'psi', rangeTo: 60 }), showing(413.6), true],
    ['not what is beyond it in psi', gauge({ unit: 'psi', rangeTo: 60 }), showing(413.7), false],
  ])('holds %s', (_, instrument, readings, isHeld) => {
    // 60 psi are 413.685 kPa (NIST SP 811, appendix B.8).
    expect(rangeHolds(instrument, readings)).toBe(isHeld)
  })
})

describe('what the gauge of a static test showed', () => {
  const test100 = buildStaticTest({
    startPressureKPaAbs: 271.325,
    endPressureKPaAbs: 270.325,
    barometerKPa: 101.325,
  })
  const typed = (pressureReference: 'gauge' | 'absolute') => ({
    ...test100,
    typed: { ...test100.typed, pressureReference },
  })

  test('is the pressure above the air where it was read so', () => {
    const { ways } = gaugeReadings(typed('gauge'))
    expect(ways).toHaveLength(1)
    expect(ways[0]?.[0]).toBeCloseTo(170_000, 6) // doubles
    expect(ways[0]?.[1]).toBeCloseTo(169_000, 6) // doubles
  })

  test('may be either where an absolute one was sent: a good gauge is not refused', () => {
    const readings = gaugeReadings(typed('absolute'))
    expect(rangeHolds(gauge({ rangeTo: 2.5 }), readings)).toBe(true)
    expect(rangeHolds(gauge({ rangeTo: 3 }), readings)).toBe(true)
    expect(rangeHolds(gauge({ rangeTo: 1.6 }), readings)).toBe(false)
  })
})

describe('a reading beyond the range', () => {
  const allowed: UseException = {
    id: 7,
    workOrderId: 1,
    workOrderNumber: 'W-2026-0001',
    instrumentId: 3,
    instrumentNumber: 'G-01',
    fault: 'out-of-range',
    reason: 'the other one is away',
    askedById: 1,
    askedByName: 'Tess Turner',
    askedAt: '2026-11-25T07:00:00.000Z',
    answer: {
      answer: 'allowed',
      validUntil: day,
      reason: 'the scale goes on to 5 bar',
      byName: 'Ian Ives',
      at: '2026-11-25T08:00:00.000Z',
    },
  }
  const faults = (instrument: Instrument | undefined, exceptions?: readonly UseException[]) => {
    const fields = openFields({})
    const use = { instrument, readings: showing(410), day, recordedOn: day, exceptions }
    checkRange(fields, 'gaugeInstrumentId', use)
    return fields.faults
  }

  test('is a fault of the instrument, with its range in its own unit', () => {
    expect(faults(gauge())).toEqual([
      {
        field: 'gaugeInstrumentId',
        kind: 'out-of-range-instrument',
        with: { number: 'G-01', unit: 'bar', from: 0, to: 4 },
      },
    ])
    expect(faults(gauge({ rangeFrom: null }))[0]?.with).not.toHaveProperty('from')
  })

  test('is recorded where an inspector allowed it', () => {
    expect(faults(gauge(), [allowed])).toEqual([])
    expect(faults(gauge(), [{ ...allowed, fault: 'overdue' }])).toHaveLength(1)
  })

  test('is not, where the instrument is used by an exception of its label already', () => {
    const overdue = gauge({ calibrations: [buildCalibration({ dueOn: '2026-10-01' })] })
    expect(faults(overdue, [{ ...allowed, fault: 'overdue' }, allowed])).toHaveLength(1)
  })

  test('is said once: not where the field is faulty already, or names nothing', () => {
    expect(faults(undefined)).toEqual([])
    const fields = openFields({})
    fields.fault('gaugeInstrumentId', 'not-known')
    const use = { instrument: gauge(), readings: showing(410), day, recordedOn: day }
    checkRange(fields, 'gaugeInstrumentId', use)
    expect(fields.faults).toHaveLength(1)
  })
})
