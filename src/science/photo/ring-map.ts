import type { Ellipse } from './ellipse.ts'

/** Where the points of the unit disc lie in a picture: x right, y up, into pixels, y down. */
export interface RingMap {
  readonly cx: number
  readonly cy: number
  /** px = cx + xx x + xy y, py = cy - (xy x + yy y): symmetric, so directions stay as they are. */
  readonly xx: number
  readonly xy: number
  readonly yy: number
}

/**
 * Gives the map from the unit disc to the inside of an ellipse in a picture. A circle that is seen
 * obliquely is stretched along the short axis only, so that directions along the axes are kept.
 *
 * @param ellipse the outer edge in the picture
 * @returns the centre and a symmetric matrix
 * Source: parallel projection of a circle; common practice, no source.
 * @example ringMap({ cx: 5, cy: 5, rx: 4, ry: 2, rotationDeg: 90 }).yy // 4
 */
export function ringMap(ellipse: Ellipse): RingMap {
  const { cx, cy, rx, ry, rotationDeg } = ellipse
  const c = Math.cos((rotationDeg * Math.PI) / 180)
  const s = Math.sin((rotationDeg * Math.PI) / 180)
  return {
    cx,
    cy,
    xx: rx * c * c + ry * s * s,
    xy: (rx - ry) * c * s,
    yy: rx * s * s + ry * c * c,
  }
}
