import { requireRange } from '../check/require-range.ts'
import { requireWhole } from '../check/require-whole.ts'
import { distinctAngles } from './distinct-angles.ts'

/**
 * Gives by how much the total reading of a round surface may fall short at these positions, since
 * the highest and the lowest place may lie between them, in um.
 *
 * e x (2 - least over all directions of (highest - lowest cosine of the positions)); for N even
 * positions, N even, 2 e (1 - cos(pi / N)). The least width of a polygon stands on one of its sides,
 * so the directions of the sides are all that need be looked at.
 *
 * @param anglesDeg two or more different positions
 * @param eccentricityUm e: 0 or more
 * @returns um, from 0 to 2 e
 * @throws RangeError outside these ranges
 * Validity: of the eccentricity or tilt alone. A lobe, flat or burr between two positions may be
 *   missed whole, whatever its height.
 * Source: geometry; 1 - cos 22.5 degrees = 7.6 % of the total reading for eight positions.
 * @example couldBeMissedUm([0, 45, 90, 135, 180, 225, 270, 315], 50) // 7.612
 */
export function couldBeMissedUm(anglesDeg: readonly number[], eccentricityUm: number): number {
  const name = 'couldBeMissedUm'
  requireRange(name, 'eccentricityUm', eccentricityUm, { from: 0, to: 1e12 })
  const angles = distinctAngles(anglesDeg)
  requireWhole(name, 'count of positions', angles.length, { from: 2, to: 100_000 })
  const corners = angles.map((deg) => (deg * Math.PI) / 180)
  let least = 2
  corners.forEach((from, i) => {
    const to = (corners[i + 1] ?? (corners[0] as number) + 2 * Math.PI) as number
    const direction = (from + to) / 2
    const cosines = corners.map((one) => Math.cos(one - direction))
    least = Math.min(least, Math.max(...cosines) - Math.min(...cosines))
  })
  return eccentricityUm * Math.max(0, 2 - least)
}
