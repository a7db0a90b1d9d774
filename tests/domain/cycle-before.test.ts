import { describe, expect, test } from 'vitest'
import { cycleBefore } from '../../src/domain/cycle-before.ts'
import type { CountedReading, FlatnessReading } from '../../src/domain/flatness.ts'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'

const at = (hour: number) => `2026-11-24T${hour}:00:00.000Z`
const cycle = (id: number, hour: number, changes: Partial<LapCycle> = {}) =>
  buildLapCycle({ id, recordedAt: at(hour), ...changes })
const reading = (id: number, hour: number, changes: Partial<CountedReading> = {}) =>
  buildFlatnessReading({ id, componentId: 11, recordedAt: at(hour), ...changes })
const idBefore = (
  one: FlatnessReading,
  cycles: readonly LapCycle[],
  readings: readonly FlatnessReading[] = [one],
) => cycleBefore(one, { readings, cycles })?.cycle.id ?? null

describe('the cycle before a reading', () => {
  test('is the newest of its face that was written down before it', () => {
    const cycles = [cycle(1, 10), cycle(2, 12), cycle(3, 14), cycle(4, 12, { componentId: 12 })]
    expect(idBefore(reading(1, 13), cycles)).toBe(2)
    expect(idBefore(reading(1, 15), cycles)).toBe(3)
    expect(idBefore(reading(1, 13, { componentId: 12 }), cycles)).toBe(4)
  })

  test('is none before the first cycle, and the cycle itself at the same instant', () => {
    expect(idBefore(reading(1, 10), [cycle(1, 11)])).toBeNull()
    expect(idBefore(reading(1, 11), [cycle(1, 11)])).toBe(1)
    expect(idBefore(reading(1, 11), [])).toBeNull()
  })

  test('stays the same when the reading, or the cycle, is corrected after a further lap', () => {
    const wrong = reading(1, 11, { replacedById: 2 })
    const right = reading(2, 15, { replacesId: 1 })
    const cycles = [cycle(1, 10), cycle(2, 13)]
    expect(idBefore(right, cycles, [wrong, right])).toBe(1)
    const corrected = [
      cycle(1, 10, { replacedById: 3 }),
      cycle(2, 13),
      cycle(3, 16, { replacesId: 1 }),
    ]
    expect(idBefore(right, corrected, [wrong, right])).toBe(3)
  })

  test('is none for a face as it came, though that was written down later', () => {
    expect(idBefore(reading(1, 12, { condition: 'as-found' }), [cycle(1, 10)])).toBeNull()
  })

  test('is none where what is read belongs to no face', () => {
    const when = { condition: 'as-left', replacesId: null, recordedAt: at(12) } as const
    const of = { id: 1, componentId: null, ...when }
    expect(cycleBefore(of, { readings: [of], cycles: [cycle(1, 10)] })).toBeNull()
  })
})
