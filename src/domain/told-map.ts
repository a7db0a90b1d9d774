import { peakAndValley } from '../science/surface/peak-and-valley.ts'
import type { PolarMap } from '../science/surface/polar-map.ts'

type Height = { readonly heightUm: number; readonly angleDeg: number }
type Circle = { readonly lowestUm: number; readonly highestUm: number }

/** What a person who doesn't see the drawings of a face is told of them. */
export type ToldMap = {
  readonly highest: Height
  readonly lowest: Height
  /** Means around, at both edges. */
  readonly meanUm: { readonly inner: number; readonly outer: number }
  readonly around: { readonly inner: Circle; readonly outer: Circle }
}

/**
 * The map of a face in a few figures.
 * @param map without its plane, radii in mm, heights in um; two circles or more
 */
export function toldMap(map: PolarMap): ToldMap {
  const { peak, valley } = peakAndValley(map)
  const [inner, outer] = [map.heights[0] ?? [], map.heights.at(-1) ?? []]
  return {
    highest: { heightUm: peak.height, angleDeg: peak.angleDeg },
    lowest: { heightUm: valley.height, angleDeg: valley.angleDeg },
    meanUm: { inner: meanOf(inner), outer: meanOf(outer) },
    around: { inner: circle(inner), outer: circle(outer) },
  }
}

function meanOf(heights: readonly number[]): number {
  return heights.reduce((sum, one) => sum + one, 0) / heights.length
}

function circle(heights: readonly number[]): Circle {
  return { lowestUm: Math.min(...heights), highestUm: Math.max(...heights) }
}
