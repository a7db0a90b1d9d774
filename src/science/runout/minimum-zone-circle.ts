import { minimumZone } from '../surface/minimum-zone.ts'
import { leastSquaresCircle, type PlanePoint } from './least-squares-circle.ts'

/** Two circles about one centre that hold all points between them, as near as can be. */
export interface MinimumZoneCircle {
  readonly x: number
  readonly y: number
  readonly innerRadius: number
  readonly outerRadius: number
  /** outerRadius - innerRadius: the roundness deviation. */
  readonly width: number
}

const mostSteps = 50

/**
 * Gives the minimum-zone circle (MZCI) of points of a section.
 *
 * least over the centre of (largest - smallest distance from it); about a centre the distances are
 * all but linear in its move, so each step is a linear programme solved exactly
 *
 * @param points three or more, not all on one line, round the whole circle, x and y in one unit
 * @returns in that unit
 * @throws RangeError with fewer points
 * Validity: points round the circle; of an arc it may be a circle that is nearest only among its
 *   neighbours.
 * Source: ISO 12181-1, from memory; optimal where outer and inner contacts alternate.
 * @example minimumZoneCircle([{ x: 11, y: 0 }, { x: -11, y: 0 }, { x: 0, y: 10 },
 *   { x: 0, y: -10 }]).width // 1.000
 */
export function minimumZoneCircle(points: readonly PlanePoint[]): MinimumZoneCircle {
  let best = about(points, leastSquaresCircle(points))
  for (let step = 0; step < mostSteps; step++) {
    const feet = points.map((p) => {
      const distance = Math.hypot(p.x - best.x, p.y - best.y)
      return { x: (p.x - best.x) / distance, y: (p.y - best.y) / distance, z: distance }
    })
    const { slopeX, slopeY } = minimumZone(feet)
    const next = about(points, { x: best.x + slopeX, y: best.y + slopeY })
    if (next.width >= best.width) break
    best = next
  }
  return best
}

function about(points: readonly PlanePoint[], { x, y }: PlanePoint): MinimumZoneCircle {
  const distances = points.map((p) => Math.hypot(p.x - x, p.y - y))
  const [innerRadius, outerRadius] = [Math.min(...distances), Math.max(...distances)]
  return { x, y, innerRadius, outerRadius, width: outerRadius - innerRadius }
}
