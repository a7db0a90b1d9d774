import { requireRange } from '../check/require-range.ts'
import { peakAndValley } from './peak-and-valley.ts'
import { withoutPlane } from './without-plane.ts'

const circleCount = 65
const rayCount = 360

/**
 * Says how much of a face's true height a straight line counts: a line is laid through both ends
 * of the band nearest the middle, and the bands between line and surface are counted.
 *
 * reading(direction) = max over the land of |height - the straight line through both ends|;
 * share = reading / peak to valley
 *
 * @param height by radius (outer edge 1) and angle in radians, any unit
 * @param radiusRatio inner over outer radius, from 0.05 to 0.98
 * @returns largest share over all directions, and their mean
 * @throws RangeError outside this range, or for a face without height
 * Validity: without errors of reading. A dish or a cone is seen in full; of a saddle that grows
 *   with the square of the radius at most (1 - radiusRatio^2) / 2, of waves that are as high at
 *   both edges nothing.
 * Source: geometry of the line through both ends of a band, own derivation.
 * @example lineCountShare((r, angle) => r * r * Math.cos(2 * angle), 0.8).largest // 0.1800
 */
export function lineCountShare(
  height: (radius: number, angle: number) => number,
  radiusRatio: number,
): { readonly largest: number; readonly mean: number } {
  requireRange('lineCountShare', 'radiusRatio', radiusRatio, { from: 0.05, to: 0.98 })
  const radii = Array.from({ length: circleCount }, (_, i) => {
    return radiusRatio + ((1 - radiusRatio) * i) / (circleCount - 1)
  })
  const anglesDeg = Array.from({ length: rayCount }, (_, j) => (360 * j) / rayCount)
  const heights = radii.map((r) => anglesDeg.map((deg) => height(r, (deg * Math.PI) / 180)))
  const { peakToValley } = peakAndValley(withoutPlane({ radii, anglesDeg, heights }).map)
  const at = (i: number, j: number) => heights.at(i)?.[j % rayCount] as number
  const shares = Array.from({ length: rayCount / 2 }, (_, j) => {
    const opposite = j + rayCount / 2
    const [near, far] = [at(-1, j), at(-1, opposite)]
    const off = radii.flatMap((r, i) => [
      Math.abs(at(i, j) - ((near + far) / 2 + (r * (near - far)) / 2)),
      Math.abs(at(i, opposite) - ((near + far) / 2 - (r * (near - far)) / 2)),
    ])
    return Math.max(...off) / peakToValley
  })
  requireRange('lineCountShare', 'peak to valley', peakToValley, {
    from: Number.MIN_VALUE,
    to: Number.MAX_VALUE,
  })
  return {
    largest: Math.max(...shares),
    mean: shares.reduce((a, b) => a + b, 0) / shares.length,
  }
}
