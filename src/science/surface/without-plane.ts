import { areaWeights } from './area-weights.ts'
import type { PolarMap } from './polar-map.ts'

/** A map without the plane that fits it best, and that plane. */
export interface MapWithoutPlane {
  readonly map: PolarMap
  /** Height of the plane at the middle. */
  readonly offset: number
  /** Slopes to the right and upwards, height per unit of the radii. */
  readonly slopeX: number
  readonly slopeY: number
}

/**
 * Takes away the plane that fits a map best, every patch of the land counting by its area.
 *
 * least sum of w (height - offset - slopeX x - slopeY y)^2, w from areaWeights
 *
 * @param map three rays or more in even steps once around, as PolarMap says
 * @returns the map that is left, and the plane
 * @throws RangeError with fewer than three rays, or when the map is no full grid
 * Source: least-squares reference plane, ISO 12781 (from memory).
 * @example withoutPlane({ radii: [1, 2], anglesDeg: [0, 90, 180, 270],
 *   heights: [[6, 5, 4, 5], [7, 5, 3, 5]] }).slopeX // 1.0000
 */
export function withoutPlane(map: PolarMap): MapWithoutPlane {
  const { radii, anglesDeg, heights } = map
  const count = anglesDeg.length
  if (!(count >= 3 && heights.length === radii.length)) {
    throw new RangeError(`withoutPlane requires a full map of 3 rays or more, got ${count} rays`)
  }
  const weights = areaWeights(radii)
  const directions = anglesDeg.map((angleDeg) => {
    const angle = (angleDeg * Math.PI) / 180
    return { c: Math.cos(angle), s: Math.sin(angle) }
  })
  let [offset, alongX, alongY, square] = [0, 0, 0, 0]
  heights.forEach((row, i) => {
    if (row.length !== count) {
      throw new RangeError(`withoutPlane requires ${count} heights a ring, got ${row.length}`)
    }
    const r = radii[i] as number
    const w = (weights[i] as number) / count
    // On even rays the constant, x and y are square to each other: three separate sums.
    directions.forEach(({ c, s }, j) => {
      const height = row[j] as number
      offset += w * height
      alongX += w * r * c * height
      alongY += w * r * s * height
    })
    square += (w * count * r * r) / 2
  })
  const [slopeX, slopeY] = [alongX / square, alongY / square]
  const left = heights.map((row, i) => {
    const r = radii[i] as number
    return row.map((height, j) => {
      const { c, s } = directions[j] as { c: number; s: number }
      return height - offset - r * (slopeX * c + slopeY * s)
    })
  })
  return { map: { radii, anglesDeg, heights: left }, offset, slopeX, slopeY }
}
