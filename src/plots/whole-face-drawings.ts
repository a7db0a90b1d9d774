import type { PolarMap } from '../science/surface/polar-map.ts'
import { circleProfile } from './circle-profile.ts'
import type { Drawing } from './drawing.ts'
import { flatnessMap } from './flatness-map.ts'
import { radiusProfile } from './radius-profile.ts'

/** Lines and axes that several drawings share. */
export interface HeightScale {
  readonly stepUm: number
  readonly lowUm: number
  readonly highUm: number
}

/** The texts of the drawings of a whole face, in one language. */
export interface WholeFaceTexts {
  readonly heightText: (heightUm: number) => string
  readonly angleText: (angleDeg: number) => string
  readonly radiusText: (radiusMm: number) => string
  readonly across: {
    readonly mean: string
    readonly ray: (angleDeg: number) => string
    readonly across: string
    readonly unit: string
  }
  readonly around: {
    readonly outer: string
    readonly middle: string
    readonly inner: string
    readonly across: string
    readonly unit: string
  }
}

/** Rays that are drawn beside the mean around. */
const raysDeg = [0, 90] as const
const mapPx = 400
const profile = { widthPx: 440, heightPx: 190 } as const

/**
 * The three drawings of a whole face: contours, profile across the land, profile around it. Page
 * and document show the same.
 * @param map radii in mm, heights in um, without its plane
 * @param scale where several faces share one; absent: from the map itself
 */
export function wholeFaceDrawings(
  map: PolarMap,
  texts: WholeFaceTexts,
  scale?: HeightScale,
): { readonly map: Drawing; readonly across: Drawing; readonly around: Drawing } {
  const { heightText, angleText, radiusText } = texts
  const axis = { lowUm: scale?.lowUm, highUm: scale?.highUm }
  const { ray, ...across } = texts.across
  return {
    map: flatnessMap({ map, sizePx: mapPx, stepUm: scale?.stepUm, heightText, angleText }),
    across: radiusProfile({
      map,
      anglesDeg: raysDeg,
      ...profile,
      ...axis,
      heightText,
      radiusText,
      texts: { ...across, rays: raysDeg.map(ray) },
    }),
    around: circleProfile({ map, ...profile, ...axis, heightText, angleText, texts: texts.around }),
  }
}
