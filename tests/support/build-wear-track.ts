import type { WearTrack } from '../../src/domain/wear-track.ts'

/** E31 on face 11 of order 1: 4.20 mm track of a 3.95 mm nose, read with no instrument. */
export function buildWearTrack(changes: Partial<WearTrack> = {}): WearTrack {
  return {
    id: 1,
    workOrderId: 1,
    componentId: 11,
    noseWidth: { mm: 3.95, typed: '3.95' },
    trackWidths: [{ mm: 4.2, typed: '4,20' }],
    offset: null,
    offsetHour: null,
    movementUm: 250,
    standardUncertaintyUm: null,
    method: 'run-out/worn-track 1',
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
