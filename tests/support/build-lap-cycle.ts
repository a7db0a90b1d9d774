import type { LapCycle } from '../../src/domain/lap-cycle.ts'

/** The least cycle: rotating face 11 of order 1 on a plate, by user 1, and nothing else said. */
export function buildLapCycle(changes: Partial<LapCycle> = {}): LapCycle {
  return {
    id: 1,
    workOrderId: 1,
    componentId: 11,
    purpose: 'lap',
    plate: 'Plate 2',
    plateForm: null,
    abrasive: null,
    grit: '',
    heightBeforeMm: null,
    heightAfterMm: null,
    plannedStockUm: null,
    stockUm: null,
    durationMin: null,
    loadKg: null,
    plateSagUm: null,
    plateDiameterMm: null,
    isNewRing: false,
    typed: {},
    note: '',
    replacesId: null,
    reason: '',
    recordedById: 1,
    recordedByName: 'Tess',
    recordedAt: '2026-11-24T10:00:00.000Z',
    replacedById: null,
    ...changes,
  }
}
