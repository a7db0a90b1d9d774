import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { type ZonePoint, zoneSimplex } from './zone-simplex.ts'

/** The two parallel planes nearest to each other that hold all points between them. */
export interface MinimumZone {
  /** Their distance in height: the minimum-zone flatness. */
  readonly height: number
  /** Slope of both, height per unit of x and of y. */
  readonly slopeX: number
  readonly slopeY: number
  /** Numbers of the points on the upper and on the lower plane that hold them apart. */
  readonly highIndexes: readonly number[]
  readonly lowIndexes: readonly number[]
}

/** 0 where nothing but rounding is left of the heights: the least height is then none. */
function spanOf(left: readonly number[], points: readonly ZonePoint[]): number {
  const span = most(left) + most(left.map((one) => -one))
  return span > 1e-13 * most(points.map((one) => Math.abs(one.z))) ? span : 0
}

/** A spread of a million numbers is more than a call can take. */
function most(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY)
}

/** Moves and scales the points, so that large coordinates and tilts cost no digits. */
function prepare(points: readonly ZonePoint[]) {
  const count = points.length
  const mean = (of: (p: ZonePoint) => number) => points.reduce((a, p) => a + of(p), 0) / count
  const middle = { x: mean((p) => p.x), y: mean((p) => p.y), z: mean((p) => p.z) }
  const moved = points.map((p) => ({ x: p.x - middle.x, y: p.y - middle.y, z: p.z - middle.z }))
  const size = most(moved.map((p) => Math.hypot(p.x, p.y)))
  const sum = (of: (p: ZonePoint) => number) => moved.reduce((a, p) => a + of(p), 0)
  const [xx, xy, yy] = [sum((p) => p.x * p.x), sum((p) => p.x * p.y), sum((p) => p.y * p.y)]
  const [xz, yz] = [sum((p) => p.x * p.z), sum((p) => p.y * p.z)]
  const determinant = xx * yy - xy * xy
  if (!(determinant > 1e-12 * xx * xx + 1e-12 * yy * yy)) {
    throw new RangeError('minimumZone requires points that are not all on one line')
  }
  const slopeX = (xz * yy - yz * xy) / determinant
  const slopeY = (yz * xx - xz * xy) / determinant
  const left = moved.map((p) => p.z - slopeX * p.x - slopeY * p.y)
  const span = spanOf(left, points)
  const scaled = moved.map((p, i) => ({
    x: p.x / size,
    y: p.y / size,
    z: span > 0 ? (left[i] as number) / span : 0,
  }))
  return { scaled, size, span, slopeX, slopeY }
}

/**
 * Gives the minimum-zone flatness of a surface: the least height between two parallel planes that
 * hold all of its points. Exact, not searched: the points that hold the planes apart are named,
 * and where their feet overlap (as 2 over 2, 3 over 1 or 1 over 3) no other slope can do better.
 *
 * least over slopeX, slopeY of max - min of (z - slopeX x - slopeY y)
 *
 * @param points three or more, not all on one line; x, y in one unit, z in any unit
 * @returns height in the unit of z
 * @throws RangeError with fewer points, or with all of them on one line
 * Validity: heights are taken along z, as they should where z is small against x and y; for points
 *   of a steep plane turn them first.
 * Source: linear programme of a Chebyshev fit, solved by the simplex method, E. Stiefel 1960 (from
 *   memory); criterion of the contacts, common practice, no source.
 * @example minimumZone([{ x: 0, y: 0, z: 0 }, { x: 1, y: 0, z: 0 }, { x: 0, y: 1, z: 0 },
 *   { x: 1, y: 1, z: 1 }]).height // 0.5000
 */
export function minimumZone(points: readonly ZonePoint[]): MinimumZone {
  requireWhole('minimumZone', 'count of points', points.length, { from: 3, to: 1_000_000 })
  for (const { x, y, z } of points) {
    for (const value of [x, y, z]) requireFinite('minimumZone', 'coordinate', value)
  }
  const { scaled, size, span, slopeX, slopeY } = prepare(points)
  const zone = zoneSimplex(scaled)
  return {
    height: zone.height * span,
    slopeX: slopeX + (zone.slopeX * span) / size,
    slopeY: slopeY + (zone.slopeY * span) / size,
    highIndexes: zone.highIndexes,
    lowIndexes: zone.lowIndexes,
  }
}
