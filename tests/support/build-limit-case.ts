import type { LimitCase } from '../../src/domain/limit-case.ts'

/** A case of which nothing is known, but for the changes. */
export function buildLimitCase(changes: Partial<LimitCase> = {}): LimitCase {
  return {
    faceMaterial: null,
    componentKind: null,
    service: null,
    diameterMm: null,
    pressureKPa: null,
    speedPerMin: null,
    sizesMm: { bore: null, shaft: null, face: null },
    ...changes,
  }
}
