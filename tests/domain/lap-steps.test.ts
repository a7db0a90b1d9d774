import { describe, expect, test } from 'vitest'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { heightNow, type LapRecords, lapSteps, ownStockUm } from '../../src/domain/lap-steps.ts'
import type { MeasuredValue } from '../../src/domain/measured-value.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'

const at = (hour: number) => `2026-11-24T${String(hour).padStart(2, '0')}:00:00.000Z`
const cycle = (id: number, changes: Partial<LapCycle> = {}) =>
  buildLapCycle({ id, recordedAt: at(9 + id), ...changes })
const height = (mm: number, changes: Partial<MeasuredValue> = {}) =>
  buildMeasuredValue({
    characteristic: 'face-height',
    componentId: 11,
    readings: [{ um: mm * 1000, typed: String(mm) }],
    ...changes,
  })
const records = (
  lapCycles: readonly LapCycle[],
  measuredValues: readonly MeasuredValue[] = [],
): LapRecords => ({ lapCycles, measuredValues })
const afters = (of: LapRecords) => lapSteps(of, 11).map((one) => one.after)

describe('the heights around lap cycles', () => {
  test('are not known where nobody wrote one: not even of the stock alone', () => {
    const of = records([cycle(1, { stockUm: 12 })])
    expect(lapSteps(of, 11)).toMatchObject([{ before: null, after: null, removedUm: 12 }])
    expect(heightNow(of, 11)).toBeNull()
  })

  test('are reckoned on from the height that was read, cycle by cycle', () => {
    const of = records([
      cycle(1, { heightBeforeMm: 2.9, stockUm: 20 }),
      cycle(2, { stockUm: 10 }),
      cycle(3, { heightAfterMm: 2.865 }),
    ])
    const [first, second, third] = lapSteps(of, 11)
    expect(first?.after?.mm).toBeCloseTo(2.88, 12) // rounding of doubles
    expect(second?.after).toMatchObject({ isRead: false, unknownCount: 0 })
    expect(second?.after?.mm).toBeCloseTo(2.87, 12) // rounding of doubles
    // 2.87 less 2.865 mm, to the nanometre.
    expect(third).toMatchObject({ removedUm: 5, after: { mm: 2.865, isRead: true } })
  })

  test('go by both heights where they differ from the stock that was stated', () => {
    const of = cycle(1, { heightBeforeMm: 2.9, heightAfterMm: 2.888, stockUm: 20 })
    expect(lapSteps(records([of]), 11)[0]?.removedUm).toBe(12)
    expect(ownStockUm(of)).toBe(12)
    expect(ownStockUm({ ...of, heightAfterMm: null })).toBe(20)
    expect(ownStockUm({ ...of, heightAfterMm: null, stockUm: null })).toBeNull()
  })

  test('are at most what they were, where a cycle says nothing of its stock', () => {
    const of = records([cycle(1, { heightBeforeMm: 2.9 }), cycle(2), cycle(3, { stockUm: 100 })])
    expect(afters(of)).toMatchObject([
      { mm: 2.9, unknownCount: 1 },
      { mm: 2.9, unknownCount: 2 },
      { isRead: false, unknownCount: 2 },
    ])
    expect(heightNow(of, 11)?.mm).toBeCloseTo(2.8, 12) // rounding of doubles
    // The next height read ends the doubt; its fall belongs to several cycles, so to none.
    const next = lapSteps(records([...of.lapCycles, cycle(4, { heightAfterMm: 2.7 })]), 11).at(-1)
    expect(next).toMatchObject({ removedUm: null, after: { mm: 2.7, isRead: true } })
  })

  test('begin with the height read as found, whenever that was recorded', () => {
    const found = height(2.95, { condition: 'as-found', recordedAt: at(20) })
    expect(lapSteps(records([cycle(1, { stockUm: 50 })], [found]), 11)).toMatchObject([
      { before: { mm: 2.95, isRead: true }, after: { isRead: false } },
    ])
  })

  test('are taken anew from a height read between two cycles, and after the last', () => {
    const between = height(2.8, { id: 1, recordedAt: at(11) })
    const last = height(2.7, { id: 2, recordedAt: at(15) })
    const cycles = [cycle(1), cycle(3, { stockUm: 10 })]
    const of = records(cycles, [between, last])
    expect(lapSteps(of, 11)[1]?.before).toEqual({ mm: 2.8, isRead: true, unknownCount: 0 })
    expect(heightNow(of, 11)).toEqual({ mm: 2.7, isRead: true, unknownCount: 0 })
    expect(heightNow(records([], [between, last]), 11)?.mm).toBe(2.7)
  })

  test('take no height of another face, another kind, or one that was replaced', () => {
    const values = [
      height(2.95, { id: 1, condition: 'as-found', replacedById: 4 }),
      height(4, { id: 2, condition: 'as-found', componentId: 12 }),
      height(0.004, { id: 3, characteristic: 'face-parallelism', condition: 'as-found' }),
    ]
    expect(lapSteps(records([cycle(1)], values), 11)[0]?.before).toBeNull()
    expect(heightNow(records([], values), 12)?.mm).toBe(4)
  })

  test('forget the ring before, where a new one was fitted', () => {
    const found = height(1.6, { condition: 'as-found' })
    const of = records([cycle(1, { isNewRing: true, stockUm: 8 })], [found])
    expect(lapSteps(of, 11)[0]).toMatchObject({ before: null, after: null })
  })

  test('make no stock of a height that stands above the one before', () => {
    const of = records([
      cycle(1, { heightBeforeMm: 2.9, stockUm: 100 }),
      cycle(2, { heightAfterMm: 2.85 }),
    ])
    expect(lapSteps(of, 11)[1]).toMatchObject({ removedUm: null, after: { mm: 2.85 } })
  })
})

describe('the place of a cycle', () => {
  test('is numbered by face, without those that were replaced', () => {
    const of = records([
      cycle(1, { replacedById: 3 }),
      cycle(2, { componentId: 12 }),
      cycle(3, { replacesId: 1 }),
      cycle(4),
    ])
    expect(lapSteps(of, 11).map((one) => [one.cycle.id, one.number])).toEqual([
      [3, 1],
      [4, 2],
    ])
    expect(lapSteps(of, 12).map((one) => one.number)).toEqual([1])
  })

  test('stays that of what it corrects, however late the correction', () => {
    const of = records([
      cycle(1, { replacedById: 3 }),
      cycle(2),
      cycle(3, { replacesId: 1, replacedById: 4 }),
      cycle(4, { replacesId: 3 }),
    ])
    expect(lapSteps(of, 11).map((one) => [one.cycle.id, one.lappedAt])).toEqual([
      [4, at(10)],
      [2, at(11)],
    ])
  })
})
