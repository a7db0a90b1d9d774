import type { SpringCheck } from '../../src/domain/spring-check.ts'

/** Six springs of 3 N/mm, 20 mm free and 14 mm in the seal: 108 N. */
export function buildSpringCheck(changes: Partial<SpringCheck> = {}): SpringCheck {
  return {
    id: 1,
    workOrderId: 1,
    condition: 'as-left',
    springsCount: 6,
    freeLength: { mm: 20, typed: '20' },
    newLength: { mm: 20.5, typed: '20.5' },
    loads: [],
    statedRateNPerMm: 3,
    workingLength: { mm: 14, typed: '14' },
    solidLength: { mm: 9, typed: '9' },
    rateNPerMm: 3,
    workingLoadN: 108,
    facePressureMPa: null,
    remainingTravelMm: 5,
    loadPerMmN: 18,
    setMm: 0.5,
    expandedUncertaintyN: null,
    coverageFactor: null,
    method: 'spring/working-load 1',
    instrumentId: null,
    instrument: null,
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
