import { requireWhole } from '../check/require-whole.ts'
import { distinctAngles } from './distinct-angles.ts'

/**
 * Gives how many times more an eccentricity scatters when it is read at these positions than at as
 * many even ones, in the direction in which they tell it worst.
 *
 * sqrt((count / 2) / least eigenvalue of the spread of the points (cos t, sin t) about their mean)
 *
 * @param anglesDeg three or more different positions t, repeats count once
 * @returns 1 or more; infinite where rounding leaves nothing
 * @throws RangeError with fewer than three different positions
 * Validity: of the first wave fitted together with a mean.
 * Source: covariance of a linear least-squares fit; JCGM 100:2008, H.3.
 * @example positionScatter([0, 90, 180]) // 1.500
 */
export function positionScatter(anglesDeg: readonly number[]): number {
  const angles = distinctAngles(anglesDeg)
  requireWhole('positionScatter', 'count of positions', angles.length, { from: 3, to: 100_000 })
  const points = angles.map((deg) => {
    const angle = (deg * Math.PI) / 180
    return { x: Math.cos(angle), y: Math.sin(angle) }
  })
  const count = points.length
  const x = points.reduce((sum, one) => sum + one.x, 0) / count
  const y = points.reduce((sum, one) => sum + one.y, 0) / count
  let [xx, xy, yy] = [0, 0, 0]
  for (const one of points) {
    xx += (one.x - x) ** 2
    xy += (one.x - x) * (one.y - y)
    yy += (one.y - y) ** 2
  }
  const least = (xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy)
  return least > 0 ? Math.max(1, Math.sqrt(count / 2 / least)) : Number.POSITIVE_INFINITY
}
