import type { PolarMap } from '../science/surface/polar-map.ts'
import { surfaceMap } from '../science/surface/surface-map.ts'
import { withoutPlane } from '../science/surface/without-plane.ts'
import type { WholeFace } from './whole-face.ts'

/** As its figures were taken: see wholeFlatness. */
const size = { ringCount: 17, angleCount: 180 } as const

/**
 * The map of a whole face without its plane, radii in mm and heights in um: page and document draw
 * the same one. Null where no surface was fitted.
 */
export function mapOfWholeFace({
  surface,
  outerDiameterMm,
}: Pick<WholeFace, 'surface' | 'outerDiameterMm'>): PolarMap | null {
  if (surface === null) return null
  const { map } = withoutPlane(surfaceMap(surface, size))
  return { ...map, radii: map.radii.map((one) => (one * outerDiameterMm) / 2) }
}
