import { flatnessBounds } from '../../domain/flatness.ts'
import { countedFlatnessBounds } from '../../domain/parse-counted-flatness-request.ts'
import {
  markedFlatnessBounds,
  type markedFlatnessFields,
  orderDirections,
} from '../../domain/parse-marked-flatness-request.ts'
import { photoFlatnessBounds } from '../../domain/parse-photo-flatness-request.ts'
import { thermalBounds } from '../../domain/parse-thermal.ts'
import { lampIds } from '../../science/optics/lamps.ts'
import { list, num, object, oneOf, whole } from './json-schema.ts'
import { ellipse } from './photo-schemas.ts'

const bow = object({
  deltaK: num(thermalBounds.deltaK),
  expansionPerK: num(thermalBounds.expansionPerK),
  diameterMm: num(thermalBounds.lengthMm),
  thicknessMm: num(thermalBounds.lengthMm),
})

/** What bands that were marked on a picture are sent with. */
export const markedRequestSchemas = {
  apiMarkedFlatnessRequest: object(
    {
      lamp: oneOf(lampIds),
      wavelengthNm: num(countedFlatnessBounds.wavelengthNm),
      imageWidth: whole,
      imageHeight: whole,
      outer: ellipse,
      inner: ellipse,
      outerDiameterMm: num(photoFlatnessBounds.diameterMm),
      innerDiameterMm: num(photoFlatnessBounds.diameterMm),
      points: list(
        object({ x: num(), y: num(), order: num(markedFlatnessBounds.order) }, ['x', 'y', 'order']),
        markedFlatnessBounds.pointCount,
      ),
      increasingTowards: oneOf(orderDirections),
      viewingAngleDeg: num(flatnessBounds.viewingAngleDeg),
      opticalFlatToleranceUm: num(countedFlatnessBounds.toleranceUm),
      wavelengthHalfWidthNm: num(countedFlatnessBounds.wavelengthHalfWidthNm),
      viewingAngleLimitDeg: num(flatnessBounds.viewingAngleDeg),
      thermal: bow,
      flatThermal: bow,
    } satisfies Record<(typeof markedFlatnessFields)[number], unknown>,
    [
      'imageWidth',
      'imageHeight',
      'outer',
      'inner',
      'outerDiameterMm',
      'innerDiameterMm',
      'points',
      'increasingTowards',
    ],
  ),
} as const
