import type { PolarMap } from '../science/surface/polar-map.ts'

/** What a map of a face shows. */
export interface FlatnessMapOptions {
  /** Without its plane; radii in mm or shares of the outer one, heights in um. */
  readonly map: PolarMap
  /** Width and height of the drawing, px, 240 to 1200. */
  readonly sizePx: number
  /** Between the lines; absent: chosen so that about ten are drawn. */
  readonly stepUm?: number | undefined
  /** As printed: the picture rounds nothing itself. */
  readonly heightText: (heightUm: number) => string
  readonly angleText: (angleDeg: number) => string
}
