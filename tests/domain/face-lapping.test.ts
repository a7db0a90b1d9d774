import { describe, expect, test } from 'vitest'
import { faceLappings, noseStanding } from '../../src/domain/face-lapping.ts'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'

const seal = buildSeal({
  components: [
    buildComponent({ id: 12, kind: 'stationary-seat', material: 'silicon-carbide-sintered' }),
    buildComponent({ noseHeightMm: 3, minimumNoseHeightMm: 1.5 }),
  ],
})
/** Cycles of orders 5 and 6 came before order 7. */
const cycle = (id: number, workOrderId: number, changes: Partial<LapCycle> = {}) =>
  buildLapCycle({ id, workOrderId, recordedAt: `2026-11-24T${10 + id}:00:00.000Z`, ...changes })
const lapping = (earlier: readonly LapCycle[], here: readonly LapCycle[]) => {
  const of = buildEvidence({ seal, earlierLapCycles: earlier, lapCycles: here })
  return faceLappings(of)[0]!
}

describe('the lapping of a face', () => {
  test('is told of each face, rotating face first, also where nothing was lapped', () => {
    const all = faceLappings(buildEvidence({ seal }))
    expect(all.map((one) => one.kind)).toEqual(['rotating-face', 'stationary-seat'])
    expect(all[0]).toMatchObject({
      steps: [],
      earlierCount: 0,
      relapCount: 0,
      meanStock: null,
      height: null,
      minimumMm: 1.5,
      standing: 'unknown',
    })
  })

  test('counts an order as one relap, however many cycles it took', () => {
    const of = lapping([cycle(1, 5), cycle(2, 5), cycle(3, 6)], [cycle(4, 7), cycle(5, 7)])
    expect(of).toMatchObject({ earlierCount: 3, relapCount: 3 })
    expect(of.steps.map((one) => one.number)).toEqual([1, 2])
  })

  test('counts neither as a relap nor in the mean an order in which it was only matted', () => {
    const matted = cycle(2, 6, { purpose: 'matt', stockUm: 0.2 })
    const of = lapping([cycle(1, 5, { stockUm: 10 }), matted], [])
    expect(of).toMatchObject({ earlierCount: 2, relapCount: 1 })
    expect(of.meanStock).toEqual({ um: 10, cycleCount: 1 })
    const polished = cycle(3, 7, { purpose: 'polish', stockUm: 2 })
    expect(lapping([cycle(1, 5), matted], [polished, { ...matted, id: 4 }])).toMatchObject({
      relapCount: 2,
    })
  })

  test('counts neither what was replaced nor the other face', () => {
    const earlier = [cycle(1, 5, { replacedById: 2 }), cycle(2, 6, { componentId: 12 })]
    expect(lapping(earlier, [cycle(3, 7)])).toMatchObject({ earlierCount: 0, relapCount: 1 })
  })

  test('begins anew with a new ring, whose first lapping is no relap', () => {
    const fitted = cycle(2, 6, { isNewRing: true, stockUm: 6 })
    const earlier = [cycle(1, 5, { stockUm: 30 }), fitted, cycle(3, 6, { stockUm: 4 })]
    expect(lapping(earlier, [])).toMatchObject({ earlierCount: 2, relapCount: 0 })
    const now = lapping(earlier, [cycle(4, 7, { stockUm: 8 })])
    expect(now).toMatchObject({ earlierCount: 2, relapCount: 1 })
    expect(now.meanStock).toEqual({ um: 6, cycleCount: 3 })
    const here = lapping(earlier, [cycle(4, 7, { isNewRing: true }), cycle(5, 7)])
    expect(here).toMatchObject({ earlierCount: 0, relapCount: 0, meanStock: null })
  })

  test('means the stock over the cycles that say it, a stated zero among them', () => {
    const of = lapping(
      [cycle(1, 5, { heightBeforeMm: 2.95, heightAfterMm: 2.92 }), cycle(2, 5)],
      [cycle(3, 7, { heightBeforeMm: 2.9, stockUm: 0 }), cycle(4, 7, { heightAfterMm: 2.882 })],
    )
    // 30, none said, 0, and 18 from the height carried on.
    expect(of.meanStock).toEqual({ um: 16, cycleCount: 3 })
  })

  test('holds the height against the smallest that is allowed', () => {
    const at = (mm: number) => lapping([], [cycle(1, 7, { heightAfterMm: mm })]).standing
    expect([at(1.51), at(1.5), at(1.499)]).toEqual(['kept', 'kept', 'below'])
    expect(noseStanding(1.4, null)).toBe('unknown')
    expect(noseStanding(null, 1.5)).toBe('unknown')
    // 1.6 less 0.1 is not 1.5 in doubles: what a computer rounds is forgiven.
    expect(noseStanding(1.6 - 100 / 1000 - 1e-16, 1.5)).toBe('kept')
  })
})
