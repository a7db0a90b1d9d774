import { requireWhole } from '../check/require-whole.ts'
import type { PolarMap } from './polar-map.ts'

/**
 * Gives the signed taper (coning) of a land: how much higher its outer edge lies than its inner
 * edge, each as the mean around.
 *
 * taper = mean of the heights on the last circle - mean on the first
 *
 * Sign: + where the outer edge is the higher one (a dish, concave), - where the inner edge is
 * (convex). Others count the inner edge high as +.
 *
 * @param map from the inner to the outer edge, two circles or more
 * @returns in the unit of the heights
 * @throws RangeError with fewer than two circles
 * Validity: of the edges alone; a crown that is as high at both has no taper.
 * Source: definition; common practice, no source.
 * @example radialTaper({ radii: [1, 2], anglesDeg: [0, 180], heights: [[1, 3], [0, 1]] }) // -1.5
 */
export function radialTaper(map: PolarMap): number {
  requireWhole('radialTaper', 'count of circles', map.radii.length, { from: 2, to: 10_000 })
  const mean = (row: readonly number[] = []) => row.reduce((a, b) => a + b, 0) / row.length
  return mean(map.heights.at(-1)) - mean(map.heights[0])
}
