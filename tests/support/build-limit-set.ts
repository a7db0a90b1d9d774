import type { Limit, LimitSet } from '../../src/domain/limit-set.ts'

export function buildLimit(changes: Partial<Limit> = {}): Limit {
  return {
    id: 1,
    limitSetId: 1,
    characteristic: 'flatness',
    faceMaterial: null,
    componentKind: null,
    service: null,
    diameterOverMm: null,
    diameterUpToMm: null,
    pressureOverKPa: null,
    pressureUpToKPa: null,
    speedOverPerMin: null,
    speedUpToPerMin: null,
    lower: null,
    perMmOf: null,
    typedLower: '',
    typedUpper: '',
    typedUnit: '',
    edition: '',
    clause: '',
    upper: 0.8814,
    asWritten: '3 helium light bands',
    withinS: null,
    volumeAtMostL: null,
    startAtLeastKPaGauge: null,
    basis: 'house rule',
    source: 'test',
    ...changes,
  }
}

/** Flatness 0.8814 µm and a drop of 14 kPa in 300 s from at most 28 L; nothing on leak rate. */
export function buildLimitSet(changes: Partial<LimitSet> = {}): LimitSet {
  return {
    id: 1,
    name: 'House',
    version: 1,
    datedOn: '2026-01-01',
    note: '',
    directionsRequiredCount: 2,
    uncertaintyShareAtMost: 1 / 3,
    writtenById: null,
    writtenByName: '',
    steps: [],
    limits: [
      buildLimit(),
      buildLimit({
        id: 2,
        characteristic: 'static-drop',
        upper: 14,
        asWritten: '2 psi in 5 min',
        withinS: 300,
        volumeAtMostL: 28,
      }),
    ],
    ...changes,
  }
}
