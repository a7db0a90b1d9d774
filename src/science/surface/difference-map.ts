import { requireRange } from '../check/require-range.ts'
import type { AnnularSurface } from './annular-surface.ts'
import type { PolarMap } from './polar-map.ts'
import { surfaceMap } from './surface-map.ts'
import { withoutPlane } from './without-plane.ts'

/**
 * Gives the height of one surface over another of the same face, without tilt between them: what
 * lapping took, or what two readings disagree in.
 *
 * height = first - second, both turned to the same position, less its least-squares plane
 *
 * @param first, second: ratios of radii within 0.02 of each other, heights in one unit
 * @param size ringCount, angleCount: as surfaceMap
 * @returns the map, on the radii of the first; its mean is 0
 * @throws RangeError outside these ranges
 * Source: definition; common practice, no source.
 * @example differenceMap({ radiusRatio: 0.5, level: 1, coefficients: [0, 0, 3, 0, 0, 0, 0, 0],
 *   seenFrom: 0.5, seenTo: 1 }, { radiusRatio: 0.5, level: 1, coefficients: [0, 0, 3, 0, 0, 0, 0,
 *   0], seenFrom: 0.5, seenTo: 1 }, { ringCount: 2, angleCount: 8 }).heights[1][0] // 0
 */
export function differenceMap(
  first: AnnularSurface,
  second: AnnularSurface,
  size: { readonly ringCount: number; readonly angleCount: number },
): PolarMap {
  const apart = Math.abs(first.radiusRatio - second.radiusRatio)
  requireRange('differenceMap', 'difference of radiusRatio', apart, { from: 0, to: 0.02 })
  const one = surfaceMap(first, size)
  const other = surfaceMap(second, size)
  const heights = one.heights.map((row, i) =>
    row.map((height, j) => height - (other.heights[i]?.[j] as number)),
  )
  return withoutPlane({ ...one, heights }).map
}
