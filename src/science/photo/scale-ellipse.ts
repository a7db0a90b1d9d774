import type { Ellipse } from './ellipse.ts'

/**
 * Gives an ellipse as it lies in a picture of another size.
 *
 * x' = (x + 1/2) by - 1/2: whole numbers are the middles of pixels
 *
 * @param ellipse in a picture
 * @param by pixels of the other picture for one of this one, above 0
 * @returns the ellipse in the other picture
 * Source: geometry of pixels, common practice, no source.
 * @example scaleEllipse({ cx: 9.5, cy: 0, rx: 4, ry: 2, rotationDeg: 7 }, 0.5).cx // 4.5
 */
export function scaleEllipse(ellipse: Ellipse, by: number): Ellipse {
  const { cx, cy, rx, ry, rotationDeg } = ellipse
  return {
    cx: (cx + 0.5) * by - 0.5,
    cy: (cy + 0.5) * by - 0.5,
    rx: rx * by,
    ry: ry * by,
    rotationDeg,
  }
}
