import { describe, expect, test } from 'vitest'
import { certifiedLappings } from '../../src/domain/certified-lapping.ts'
import type { Evidence } from '../../src/domain/evidence.ts'
import type { LapCycle } from '../../src/domain/lap-cycle.ts'
import { buildEvidence } from '../support/build-evidence.ts'
import { buildLapCycle } from '../support/build-lap-cycle.ts'
import { buildMeasuredValue } from '../support/build-measured-value.ts'
import { buildComponent, buildSeal } from '../support/build-seal.ts'

const seal = buildSeal({
  components: [
    buildComponent({ minimumNoseHeightMm: 1.5 }),
    buildComponent({ id: 12, kind: 'stationary-seat', material: 'alumina' }),
  ],
})
const cycle = (id: number, changes: Partial<LapCycle> = {}) =>
  buildLapCycle({ id, recordedAt: `2026-11-24T${10 + id}:00:00.000Z`, ...changes })
const certified = (lapCycles: readonly LapCycle[], changes: Partial<Evidence> = {}) =>
  certifiedLappings(buildEvidence({ seal, lapCycles, ...changes }))

describe('what a certificate says of the lapping', () => {
  test('is nothing of a face that was not lapped', () => {
    expect(certified([])).toEqual([])
    expect(certified([cycle(1, { componentId: 12 })]).map((one) => one.face)).toEqual([
      'stationary-seat',
    ])
  })

  test('is the heights, what came off, and what is left above the minimum', () => {
    const [face] = certified([
      cycle(1, { heightBeforeMm: 1.62, stockUm: 22 }),
      cycle(2, { heightAfterMm: 1.581 }),
    ])
    expect(face).toMatchObject({
      cycleCount: 2,
      earlierCycleCount: 0,
      relapCount: 1,
      isNewRing: false,
      isHeightRead: true,
      unknownStockCount: 0,
      standing: 'kept',
    })
    expect(face?.heightBeforeMm?.text).toBe('1.620')
    // 1.62 less 1.581 mm are 39 µm; 1.581 less 1.5 mm is 0.081 mm.
    expect(face?.removedUm?.text).toBe('39.0')
    expect(face?.marginMm?.text).toBe('0.081')
    expect(face?.minimumMm?.text).toBe('1.5')
  })

  test('says nothing of the stock where one cycle does not, and keeps the rest', () => {
    const [face] = certified([cycle(1, { heightBeforeMm: 1.62, stockUm: 22 }), cycle(2)])
    expect(face).toMatchObject({ removedUm: null, unknownStockCount: 1, isHeightRead: false })
    expect(face?.heightMm?.text).toBe('1.598')
    const [stated] = certified([cycle(1, { stockUm: 22 }), cycle(2, { stockUm: 8 })])
    expect(stated).toMatchObject({ heightMm: null, marginMm: null, standing: 'unknown' })
    expect(stated?.removedUm?.text).toBe('30.0')
  })

  test('says below, with how far', () => {
    const [face] = certified([cycle(1, { heightAfterMm: 1.488 })])
    expect(face).toMatchObject({ standing: 'below', minimumMm: { text: '1.5' } })
    expect(face?.marginMm?.text).toBe('−0.012')
  })

  test('takes the height that was read with an instrument after the last cycle', () => {
    const read = buildMeasuredValue({
      characteristic: 'face-height',
      componentId: 11,
      readings: [{ um: 1571, typed: '1.571' }],
      recordedAt: '2026-11-24T15:00:00.000Z',
    })
    const cycles = [cycle(1, { heightBeforeMm: 1.6, stockUm: 20 })]
    const [face] = certified(cycles, { measuredValues: [read] })
    expect(face?.heightMm?.text).toBe('1.571')
    expect(face).toMatchObject({ isHeightRead: true, removedUm: { text: '29.0' } })
  })

  test('tells of a new ring alone what was done to it', () => {
    const [face] = certified(
      [
        cycle(1, { heightBeforeMm: 1.6, stockUm: 90 }),
        cycle(2, { isNewRing: true, heightBeforeMm: 3, stockUm: 10 }),
      ],
      { earlierLapCycles: [buildLapCycle({ id: 9, workOrderId: 0 })] },
    )
    expect(face).toMatchObject({
      cycleCount: 2,
      earlierCycleCount: 0,
      relapCount: 0,
      isNewRing: true,
      heightBeforeMm: { text: '3.000' },
      removedUm: { text: '10.0' },
    })
  })

  test('names every correction with its reason', () => {
    const [face] = certified([
      cycle(1, { stockUm: 100, replacedById: 2 }),
      cycle(2, { stockUm: 10, replacesId: 1, reason: 'slip of the key' }),
    ])
    expect(face?.corrections).toEqual([
      { reason: 'slip of the key', byName: 'Tess', at: '2026-11-24T12:00:00.000Z' },
    ])
  })
})
