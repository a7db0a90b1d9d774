import { describe, expect, test } from 'vitest'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { type LapDraft, lapForecast } from '../../src/domain/lap-forecast.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'

const seal = buildSeal({ components: [buildComponent({ minimumNoseHeightMm: 1.5 })] })
const draft = (changes: Partial<LapDraft> = {}): LapDraft => ({ ...buildLapCycle(), ...changes })
const forecast = (changes: Partial<LapDraft>, lapCycles: readonly LapCycle[] = []) =>
  lapForecast(draft(changes), buildEvidence({ seal, lapCycles }))

describe('the outlook of a cycle that is being entered', () => {
  test('is open without a height or a stock', () => {
    expect(forecast({})).toMatchObject({
      expected: null,
      after: { mm: null, standing: 'unknown', isExpected: false },
      next: null,
    })
    expect(forecast({ stockUm: 10 }).after.standing).toBe('unknown')
  })

  test('warns by the stock planned before anything is lapped', () => {
    const { expected, after, next } = forecast({ heightBeforeMm: 1.52, plannedStockUm: 15 })
    expect(expected).toEqual({ um: 15, by: 'planned', cycleCount: 0 })
    expect(after).toMatchObject({ standing: 'kept', isExpected: true, isAtMost: false })
    expect(after.mm).toBeCloseTo(1.505, 12) // rounding of doubles
    expect(next?.standing).toBe('below')
    expect(forecast({ heightBeforeMm: 1.52, plannedStockUm: 20 }).after.standing).toBe('kept')
    expect(forecast({ heightBeforeMm: 1.52, plannedStockUm: 21 }).after.standing).toBe('below')
  })

  test('goes by the mean of the cycles so far where nothing is planned', () => {
    const done = [
      buildLapCycle({ heightBeforeMm: 1.6, stockUm: 30 }),
      buildLapCycle({ id: 2, stockUm: 40 }),
    ]
    const { expected, after } = forecast({}, done)
    expect(expected).toEqual({ um: 35, by: 'mean', cycleCount: 2 })
    // 1.6 less 0.07 read, less 0.035 expected.
    expect(after).toMatchObject({ standing: 'below', isExpected: true })
    expect(after.mm).toBeCloseTo(1.495, 12) // rounding of doubles
  })

  test('goes by what was entered where that is known, and looks one cycle on', () => {
    const of = forecast({ heightBeforeMm: 1.55, heightAfterMm: 1.52, plannedStockUm: 10 })
    expect(of.after).toMatchObject({ mm: 1.52, standing: 'kept', isExpected: false })
    expect(of.next?.standing).toBe('kept')
    expect(of.step.removedUm).toBe(30)
    // Without a plan its own stock is the mean so far.
    const next = forecast({ heightBeforeMm: 1.55, heightAfterMm: 1.52 }).next
    expect(next).toMatchObject({ standing: 'below' })
    expect(forecast({ heightAfterMm: 1.49 }).after.standing).toBe('below')
  })

  test('says that a height is at most so, where a cycle before said nothing of its stock', () => {
    const done = [buildLapCycle({ heightBeforeMm: 1.6 })]
    expect(forecast({ stockUm: 20 }, done).after).toMatchObject({ isAtMost: true })
    expect(forecast({ heightAfterMm: 1.55 }, done).after).toMatchObject({ isAtMost: false })
  })

  test('takes the place of the cycle that it corrects', () => {
    const done = [
      buildLapCycle({ heightBeforeMm: 1.7, stockUm: 20 }),
      buildLapCycle({ id: 2, stockUm: 20, recordedAt: '2026-11-24T11:00:00.000Z' }),
    ]
    const of = forecast({ heightBeforeMm: 1.6, stockUm: 30, replacesId: 1 }, done)
    expect(of.step.number).toBe(1)
    expect(of.lapping.steps).toHaveLength(2)
    expect(of.lapping.height?.mm).toBeCloseTo(1.55, 12) // rounding of doubles
  })

  test('needs a face of the seal', () => {
    expect(() => forecast({ componentId: 99 })).toThrow('lapForecast requires a face of the seal')
  })
})
