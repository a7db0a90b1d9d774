import { requireRange } from '../check/require-range.ts'

/**
 * Gives the largest share of the true height of a saddle that a count along one straight line can
 * show on a ring.
 *
 * A saddle is h = (height / 2) r^2 cos(2 angle), r from radiusRatio to 1, height from its lowest to
 * its highest place. Along the line that shows most, through both rim ends of a band, the gap
 * departs by no more than (height / 2) (1 - radiusRatio^2).
 *
 * share = (1 - radiusRatio^2) / 2
 *
 * @param radiusRatio inner over outer radius, from 0.05 to 0.99
 * @returns from 0 to 0.5; between the two lows and highs of the saddle a line shows nothing at all
 * @throws RangeError outside this range
 * Validity: one line; two lines at right angles, added as for a saddle, show at most twice this.
 * Source: own derivation.
 * @example saddleLineShare(0.7) // 0.255
 */
export function saddleLineShare(radiusRatio: number): number {
  requireRange('saddleLineShare', 'radiusRatio', radiusRatio, { from: 0.05, to: 0.99 })
  return (1 - radiusRatio ** 2) / 2
}
