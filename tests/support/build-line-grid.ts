import type { WholeFace } from '../../src/domain/whole-face.ts'
import { buildWholeFace } from './build-whole-face.ts'

/** A face read with a grid of lines on photograph 1: two departures and no surface. */
export function buildLineGrid(): WholeFace {
  return buildWholeFace({
    source: {
      kind: 'line-grid',
      photoId: 1,
      viewingAngleDeg: null,
      directionDeg: 0,
      spacingPx: 40,
      offsetPx: 0,
      oneWayBands: 1.25,
      otherWayBands: 0.5,
    },
    surface: null,
    quality: null,
    seen: null,
    lobes: [],
    minimumZoneUm: null,
    rmsUm: null,
  })
}
