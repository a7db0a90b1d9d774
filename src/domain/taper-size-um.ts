import { radialTaper } from '../science/surface/radial-taper.ts'
import { mapOfWholeFace } from './map-of-whole-face.ts'
import type { WholeFace } from './whole-face.ts'

/** How much higher one edge lies than the other, whichever it is; null where nothing was fitted. */
export function taperSizeUm(
  wholeFace: Pick<WholeFace, 'surface' | 'outerDiameterMm'>,
): number | null {
  const map = mapOfWholeFace(wholeFace)
  return map === null ? null : Math.abs(radialTaper(map))
}
