import { radialTaper } from '../science/surface/radial-taper.ts'
import { surfaceMap } from '../science/surface/surface-map.ts'
import type { WholeFace } from './whole-face.ts'

/** Both edges; waves around and a plane have no mean on rays as many as these. */
const size = { ringCount: 2, angleCount: 36 } as const

/** How much higher one edge lies than the other, whichever it is; null where nothing was fitted. */
export function taperSizeUm({ surface }: Pick<WholeFace, 'surface'>): number | null {
  return surface === null ? null : Math.abs(radialTaper(surfaceMap(surface, size)))
}
