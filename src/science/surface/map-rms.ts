import { areaWeights } from './area-weights.ts'
import type { PolarMap } from './polar-map.ts'

/**
 * Gives the root mean square of a map, every patch of the land counting by its area.
 *
 * rms = sqrt(sum of w height^2), w from areaWeights
 *
 * @param map for flatness without its plane, so that the heights average to 0
 * @returns in the unit of the heights
 * @throws RangeError as areaWeights does
 * Source: definition of RMS flatness, ISO 12781 (from memory).
 * @example mapRms({ radii: [1, 2], anglesDeg: [0, 180], heights: [[2, -2], [2, -2]] }) // 2.0000
 */
export function mapRms(map: PolarMap): number {
  const weights = areaWeights(map.radii)
  return Math.sqrt(
    map.heights.reduce((sum, row, i) => {
      const square = row.reduce((part, height) => part + height * height, 0)
      return sum + ((weights[i] as number) * square) / row.length
    }, 0),
  )
}
