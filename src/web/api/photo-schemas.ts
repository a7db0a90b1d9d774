import { flatnessBounds } from '../../domain/flatness.ts'
import { countedFlatnessBounds } from '../../domain/parse-counted-flatness-request.ts'
import {
  photoFlatnessBounds,
  type photoFlatnessFields,
} from '../../domain/parse-photo-flatness-request.ts'
import { ringEdgeBounds } from '../../domain/parse-ring-edge.ts'
import { lampIds } from '../../science/optics/lamps.ts'
import { answer, list, num, object, oneOf, text } from './json-schema.ts'

const { placePx, halfAxisPx, rotationDeg, pointCount } = ringEdgeBounds
/** An edge of a ring in a picture. */
export const ellipse = object(
  {
    cx: num(placePx),
    cy: num(placePx),
    rx: num(halfAxisPx),
    ry: num(halfAxisPx),
    rotationDeg: num(rotationDeg),
  },
  ['cx', 'cy', 'rx', 'ry'],
)
const points = list(list(num(placePx), { min: 2, max: 2 }), pointCount)

/** What a photograph of light bands is sent with; the picture itself stands beside it. */
const request = object(
  {
    lamp: oneOf(lampIds),
    wavelengthNm: num(countedFlatnessBounds.wavelengthNm),
    outerDiameterMm: num(photoFlatnessBounds.diameterMm),
    innerDiameterMm: num(photoFlatnessBounds.diameterMm),
    outer: ellipse,
    inner: ellipse,
    outerPoints: points,
    innerPoints: points,
    wedge: object({
      opensTowardsDeg: num(photoFlatnessBounds.directionDeg),
      centre: oneOf(['closer', 'further']),
    }),
    viewingAngleDeg: num(flatnessBounds.viewingAngleDeg),
    opticalFlatToleranceUm: num(countedFlatnessBounds.toleranceUm),
    wavelengthHalfWidthNm: num(countedFlatnessBounds.wavelengthHalfWidthNm),
  } satisfies Record<(typeof photoFlatnessFields)[number], unknown>,
  ['outerDiameterMm', 'innerDiameterMm'],
)

export const photoRequestSchemas = {
  apiPhotoFlatnessRequest: object(
    { image: { type: 'string', contentMediaType: 'image/*' }, request },
    ['image', 'request'],
  ),
} as const

const numberOrNull = { type: ['number', 'null'] }

/** What is answered of a whole face, from a photograph or from marks on one. */
export const wholeFlatnessAnswer = {
  method: text,
  sees: text,
  wavelengthNm: num(),
  bandHeightUm: num(),
  flatnessUm: num(),
  flatnessMinimumZoneUm: num(),
  rmsUm: num(),
  taperUm: numberOrNull,
  form: text,
  lobes: list(answer({ order: num(), amplitudeUm: num(), phaseDeg: num() })),
  bandsSeen: num(),
  quality: num(),
  outer: ellipse,
  inner: ellipse,
  map: answer({ radii: list(num()), anglesDeg: list(num()), heightsUm: list(list(num())) }),
  cautions: list(text),
  standardUncertaintyUm: num(),
  expandedUncertaintyUm: num(),
  coverageFactor: num(),
  effectiveDegreesOfFreedom: numberOrNull,
} as const
