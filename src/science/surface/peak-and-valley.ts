import type { PolarMap } from './polar-map.ts'

/** A place of a map and its height. */
export interface MapPlace {
  readonly radius: number
  readonly angleDeg: number
  readonly height: number
}

/**
 * Finds the highest and the lowest place of a map, both edges included.
 *
 * peakToValley = peak height - valley height
 *
 * @param map as it is meant: for flatness, without its plane
 * @returns both places, the first of equal ones from the inside and from 0 degrees; their distance
 *   in height
 * @throws RangeError without a height, or when one is not finite
 * Validity: of the places of the grid; between them the surface may be a little higher.
 * Source: definition; both edges counted, common practice, no source.
 * @example peakAndValley({ radii: [1, 2], anglesDeg: [0, 180],
 *   heights: [[0, 3], [-1, 2]] }).peakToValley // 4
 */
export function peakAndValley(map: PolarMap): {
  readonly peak: MapPlace
  readonly valley: MapPlace
  readonly peakToValley: number
} {
  let peak: MapPlace | undefined
  let valley: MapPlace | undefined
  map.heights.forEach((row, i) => {
    row.forEach((height, j) => {
      if (!Number.isFinite(height)) {
        throw new RangeError(`peakAndValley requires finite heights, got ${height}`)
      }
      const place = { radius: map.radii[i] as number, angleDeg: map.anglesDeg[j] as number, height }
      if (peak === undefined || height > peak.height) peak = place
      if (valley === undefined || height < valley.height) valley = place
    })
  })
  if (peak === undefined || valley === undefined) {
    throw new RangeError('peakAndValley requires one height or more, got none')
  }
  return { peak, valley, peakToValley: peak.height - valley.height }
}
