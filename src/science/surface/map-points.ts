import type { PolarMap } from './polar-map.ts'
import type { ZonePoint } from './zone-simplex.ts'

/**
 * Gives the points of a map with their feet across and up.
 *
 * x = radius cos(angle), y = radius sin(angle), z = height
 *
 * @param map any
 * @returns points, circle after circle from the inside
 * Source: definition of polar coordinates.
 * @example mapPoints({ radii: [1, 2], anglesDeg: [0, 90], heights: [[1, 2], [3, 4]] })[3].y // 2
 */
export function mapPoints(map: PolarMap): ZonePoint[] {
  return map.heights.flatMap((row, i) =>
    row.map((z, j) => {
      const angle = ((map.anglesDeg[j] as number) * Math.PI) / 180
      const r = map.radii[i] as number
      return { x: r * Math.cos(angle), y: r * Math.sin(angle), z }
    }),
  )
}
