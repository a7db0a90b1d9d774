import type { CertifiedWholeFace } from './certified-results.ts'
import { figure, optionalFigure } from './figure.ts'
import type { WholeFace } from './whole-face.ts'

/** As it is printed: the surface as it is stored, its figures rounded. */
export function certifiedWholeFace(wholeFace: WholeFace): CertifiedWholeFace {
  const { source, surface, outerDiameterMm, innerDiameterMm, isSignKnown, cautions } = wholeFace
  return {
    kind: source.kind,
    surface,
    outerDiameterMm,
    innerDiameterMm,
    isSignKnown,
    minimumZoneUm: optionalFigure(wholeFace.minimumZoneUm, { decimals: 3 }),
    rmsUm: optionalFigure(wholeFace.rmsUm, { decimals: 3 }),
    taperUm: optionalFigure(wholeFace.taperUm, { decimals: 3 }),
    lobes: wholeFace.lobes.map(({ order, amplitudeUm, phaseDeg }) => ({
      order,
      amplitudeUm: figure(amplitudeUm, { decimals: 3 }),
      phaseDeg: figure(phaseDeg, { decimals: 0 }),
    })),
    cautions,
    hasPhotograph: source.kind !== 'combined',
  }
}
