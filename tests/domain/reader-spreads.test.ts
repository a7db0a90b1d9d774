import { describe, expect, it } from 'vitest'
import { noFlatnessBudgetInput } from '../../src/domain/flatness-budget-input.ts'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { readerSpreadBudget } from '../../src/domain/reader-spread-budget.ts'
import { readerSpreads } from '../../src/domain/reader-spreads.ts'
import { buildFlatnessReading } from '../support/build-flatness-reading.ts'

/** A reading of a flatness by a person, at an hour of the day. */
function read(
  id: number,
  recordedById: number,
  flatnessUm: number,
  changes: Parameters<typeof buildFlatnessReading>[0] = {},
) {
  const recordedAt = `2026-11-24T${String(8 + id).padStart(2, '0')}:00:00.000Z`
  return buildFlatnessReading({ id, recordedById, flatnessUm, recordedAt, ...changes })
}

const spreads = (
  flatnessReadings: Parameters<typeof readerSpreads>[0]['flatnessReadings'],
  lapCycles: readonly LapCycle[] = [],
) => readerSpreads({ flatnessReadings, lapCycles })

function lapAt(recordedAt: string): LapCycle {
  const cycle: Partial<LapCycle> = { id: 7, componentId: 11, recordedAt }
  return { ...cycle, replacesId: null, replacedById: null } as LapCycle
}

describe('readerSpreads', () => {
  it('gives mean and standard deviation of two and of three readers', () => {
    const two = spreads([read(1, 1, 0.5), read(2, 2, 0.7)])
    expect(two[0]?.meanUm).toBeCloseTo(0.6, 12) // rounding alone
    // Of two readings: their difference over the root of two.
    expect(two[0]?.standardDeviationUm).toBeCloseTo(0.2 / Math.SQRT2, 12)
    const three = spreads([read(1, 1, 0.5), read(2, 2, 0.7), read(3, 3, 0.6)])
    expect(three[0]?.standardDeviationUm).toBeCloseTo(0.1, 12) // sqrt((0.01 + 0.01) / 2)
    expect(three[0]).toMatchObject({ degreesOfFreedom: 2, condition: 'as-left', sees: 'taper' })
  })

  it('counts each person once, by their newest reading', () => {
    const [only] = spreads([read(1, 1, 0.2), read(2, 2, 0.7), read(3, 1, 0.5)])
    expect(only?.readings.map((one) => one.id)).toEqual([2, 3])
    expect(spreads([read(1, 1, 0.5), read(2, 1, 0.7)])).toEqual([])
  })

  it('keeps faces, conditions and kinds of method apart', () => {
    const other = { componentId: 12, faceKind: 'stationary-seat' } as const
    expect(spreads([read(1, 1, 0.5), read(2, 2, 0.7, other)])).toEqual([])
    expect(spreads([read(1, 1, 0.5), read(2, 2, 0.7, { condition: 'as-found' })])).toEqual([])
    const whole = { sees: 'whole-surface', method: 'flatness/photo 1' } as const
    expect(spreads([read(1, 1, 0.5), read(2, 2, 0.7, whole)])).toEqual([])
  })

  it('leaves out what was replaced and what could not be read', () => {
    expect(spreads([read(1, 1, 0.5, { replacedById: 9 }), read(2, 2, 0.7)])).toEqual([])
    const unreadable = buildFlatnessReading({ id: 3, recordedById: 3, pattern: 'unreadable' })
    expect(spreads([read(2, 2, 0.7), unreadable])).toEqual([])
  })

  it('does not take a lap between two readings for their spread', () => {
    const lapped = [lapAt('2026-11-24T10:30:00.000Z')]
    expect(spreads([read(1, 1, 0.9), read(2, 2, 0.8), read(3, 3, 0.3)], lapped)).toEqual([])
    const after = [...[read(1, 1, 0.9), read(3, 3, 0.3)], read(4, 1, 0.4)]
    expect(spreads(after, lapped)[0]?.readings.map((one) => one.id)).toEqual([3, 4])
  })
})

describe('readerSpreadBudget', () => {
  const spread = { standardDeviationUm: 0.1, degreesOfFreedom: 2 }

  it('is the scatter of one count, known as well as there were readers', () => {
    const reading = { bandHeightUm: 0.25, pattern: 'convex' } as const
    expect(readerSpreadBudget(noFlatnessBudgetInput, spread, reading).repeatability).toEqual({
      standardDeviationBands: 0.4,
      count: 1,
      degreesOfFreedom: 2,
    })
  })

  it('gives each of the two counts of a saddle its part', () => {
    const reading = { bandHeightUm: 0.25, pattern: 'saddle' } as const
    const { repeatability } = readerSpreadBudget(noFlatnessBudgetInput, spread, reading)
    // Two such counts added scatter as the sum did: 0.4 bands.
    expect((repeatability?.standardDeviationBands ?? 0) * Math.SQRT2).toBeCloseTo(0.4, 12)
  })
})
