import { computeFlatness } from '../../src/domain/compute-flatness.ts'
import type { CountedReading } from '../../src/domain/flatness.ts'
import { buildInstrumentUse } from './build-instrument.ts'

/**
 * An as-left reading of the rotating face: convex, 2 bands and 1 band, by user 1. The computed
 * columns follow the changes, unless these name them.
 */
export function buildFlatnessReading(changes: Partial<CountedReading> = {}): CountedReading {
  const reading = {
    id: 1,
    workOrderId: 1,
    componentId: 11,
    faceKind: 'rotating-face',
    sees: 'taper',
    condition: 'as-left',
    lampInstrumentId: 1,
    flatInstrumentId: 2,
    pattern: 'convex',
    ringCentre: null,
    unreadableCause: null,
    directions: [
      { directionDeg: 0, bands: 2, bandsTyped: '2' },
      { directionDeg: 90, bands: 1, bandsTyped: '1' },
    ],
    viewingAngleDeg: 0,
    soakMin: null,
    temperatureC: null,
    budgetInput: null,
    note: '',
    replacesId: null,
    reason: '',
    lamp: buildInstrumentUse('lamp'),
    flat: buildInstrumentUse('optical-flat'),
    recordedById: 1,
    recordedByName: 'Tess',
    recordedAt: '2026-11-24T09:00:00.000Z',
    replacedById: null,
    wholeFace: null,
    ...changes,
  } as const satisfies Partial<CountedReading>
  const computed = computeFlatness(reading, {
    lampId: 'helium',
    flatToleranceUm: 0.05,
    flatStandardUncertaintyUm: null,
  })
  return { ...reading, ...computed, ...changes }
}
