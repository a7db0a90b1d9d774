import type { WholeFace } from '../../src/domain/whole-face.ts'
import { annularTerms } from '../../src/science/surface/annular-terms.ts'

const edges = {
  outer: { cx: 500, cy: 400, rx: 300, ry: 298, rotationDeg: 0 },
  inner: { cx: 500, cy: 400, rx: 240, ry: 239, rotationDeg: 0 },
}

/** A face of 60 mm with two waves around, read from photograph 1. */
export function buildWholeFace(changes: Partial<WholeFace> = {}): WholeFace {
  const coefficients = annularTerms(4).map(({ angularOrder, isSine, radialOrder }) =>
    angularOrder === 2 && !isSine && radialOrder === 0 ? 0.1 : 0,
  )
  return {
    source: {
      kind: 'photo',
      photoId: 1,
      ...edges,
      wedge: null,
      viewingAngleDeg: null,
      pressed: null,
    },
    outerDiameterMm: 60,
    innerDiameterMm: 48,
    surface: { radiusRatio: 0.8, level: 4, coefficients, seenFrom: 0.81, seenTo: 0.99 },
    isSignKnown: false,
    minimumZoneUm: 0.2,
    rmsUm: 0.0707,
    taperUm: null,
    lobes: [
      { order: 2, amplitudeUm: 0.1, phaseDeg: 0 },
      { order: 3, amplitudeUm: 0, phaseDeg: 0 },
    ],
    quality: 0.98,
    cautions: [],
    seen: {
      ...edges,
      bandLines: [
        {
          order: 0,
          points: [
            [300, 380],
            [310, 400],
            [300, 420],
          ],
        },
      ],
      residuals: { ringCount: 1, sectorCount: 4, from: 0.8, to: 1, shares: [0, 0.06, null, -0.3] },
      markResidualsBands: [],
      doubtfulDeg: [],
      tiltDirectionDeg: 20,
      tiltBands: 8,
    },
    ...changes,
  }
}
