import { peakAndValley } from '../science/surface/peak-and-valley.ts'
import type { PolarMap } from '../science/surface/polar-map.ts'
import { circleProfile } from './circle-profile.ts'
import type { Drawing } from './drawing.ts'
import { flatnessMap } from './flatness-map.ts'
import { heightSteps } from './height-steps.ts'
import { radiusProfile } from './radius-profile.ts'

/** Lines and axes that several drawings share. */
export interface HeightScale {
  readonly stepUm: number
  readonly lowUm: number
  readonly highUm: number
}

/** The texts of the drawings of a whole face, in one language. */
export interface WholeFaceTexts {
  readonly heightText: (heightUm: number, decimals: number) => string
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
/** Of the map and of its axis of heights; the axes of the profiles have fewer. */
const mostLines = 10
const mapPx = 400
const profile = { widthPx: 440, heightPx: 170 } as const

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
  const { angleText, radiusText } = texts
  const decimals = decimalsFor(map, scale)
  const heightText = (heightUm: number) => texts.heightText(heightUm, decimals)
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

/** As many as the lines need: 0.005 um must not read 0.01. */
function decimalsFor(map: PolarMap, scale: HeightScale | undefined): number {
  const { peak, valley, peakToValley } = peakAndValley(map)
  if (scale === undefined && !(peakToValley > 0)) return 4
  const range = { lowUm: valley.height, highUm: peak.height }
  const stepUm = scale?.stepUm ?? heightSteps(range, { mostCount: mostLines }).stepUm
  return Math.min(6, Math.max(2, Math.ceil(-Math.log10(stepUm) - 1e-9)))
}
