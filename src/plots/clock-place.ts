import type { PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

/**
 * Gives where an angle of a turn lies in a drawing: 0 on top, as on the face of a clock.
 *
 * x = centre.x + r sin(angle), y = centre.y - r cos(angle); mirrored where angles rise the other way
 *
 * @param centre of the turn, px
 * @param isClockwise whether angles rise clockwise as it is drawn
 * @returns function of the angle in degrees and the distance from the centre in px
 * @example clockPlace({ x: 50, y: 50 }, true)(90, 40).x // 90
 */
export function clockPlace(
  centre: PointPx,
  isClockwise: boolean,
): (angleDeg: number, radiusPx: number) => PointPx {
  const side = isClockwise ? 1 : -1
  return (angleDeg, radiusPx) => {
    const angle = (angleDeg * Math.PI) / 180
    return {
      x: roundPx(centre.x + side * radiusPx * Math.sin(angle)),
      y: roundPx(centre.y - radiusPx * Math.cos(angle)),
    }
  }
}
