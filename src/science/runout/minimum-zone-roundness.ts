import { requireFinite } from '../check/require-finite.ts'
import { requireWhole } from '../check/require-whole.ts'
import { minimumZone } from '../surface/minimum-zone.ts'
import type { DialPoint } from './dial-point.ts'
import { distinctAngles } from './distinct-angles.ts'

/** Two circles about one centre, the nearest to each other that hold all readings between them. */
export interface MinimumZoneRoundness {
  readonly roundnessUm: number
  /** Their centre, towards 0 and towards 90 degrees. */
  readonly cosineUm: number
  readonly sineUm: number
  /** Numbers of the readings on the outer and on the inner circle. */
  readonly highIndexes: readonly number[]
  readonly lowIndexes: readonly number[]
}

/**
 * Gives the roundness deviation of a turn from its minimum-zone circle (MZCI), exactly.
 *
 * least over a, b of (highest - lowest of value - a cos t - b sin t)
 *
 * @param points at three or more different angles t
 * @returns um; never more than leastSquaresRoundnessUm
 * @throws RangeError with fewer positions
 * Validity: as leastSquaresRoundnessUm.
 * Source: ISO 12181-1, from memory; the same linear programme as minimumZone, feet on a circle.
 * @example minimumZoneRoundness([0, 7, 24, 38, 40, 33, 16, 2].map((valueUm, i) => ({
 *   angleDeg: 45 * i, valueUm }))).roundnessUm // 1.591
 */
export function minimumZoneRoundness(points: readonly DialPoint[]): MinimumZoneRoundness {
  const name = 'minimumZoneRoundness'
  const count = distinctAngles(points.map((one) => one.angleDeg)).length
  requireWhole(name, 'count of positions', count, { from: 3, to: 100_000 })
  const feet = points.map(({ angleDeg, valueUm }) => ({
    x: Math.cos((angleDeg * Math.PI) / 180),
    y: Math.sin((angleDeg * Math.PI) / 180),
    z: requireFinite(name, 'valueUm', valueUm),
  }))
  const { height, slopeX, slopeY, highIndexes, lowIndexes } = minimumZone(feet)
  return { roundnessUm: height, cosineUm: slopeX, sineUm: slopeY, highIndexes, lowIndexes }
}
