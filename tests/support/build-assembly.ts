import type { Assembly } from '../../src/domain/assembly.ts'

/** Put together at 14 mm with nothing asked for by a design, and turning free. */
export function buildAssembly(changes: Partial<Assembly> = {}): Assembly {
  return {
    id: 1,
    workOrderId: 1,
    workingLength: { mm: 14, typed: '14' },
    designWorkingLengthMm: null,
    workingLengthToleranceMm: null,
    designLoadN: null,
    loadTolerancePercent: null,
    measuredLoad: null,
    designSource: '',
    setScrews: [],
    torqueTolerancePercent: null,
    clips: 'none-needed',
    clipsCount: null,
    lubricant: '',
    isTurningFree: true,
    loadN: null,
    loadFrom: null,
    springCheckId: null,
    method: 'spring/working-load 1',
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
