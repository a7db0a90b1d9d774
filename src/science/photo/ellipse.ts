/**
 * An ellipse in a picture. cx, cy: centre, in pixels from the left and from the top of the upright
 * picture, whole numbers at the middles of pixels; rx, ry: half axes, in pixels, above 0;
 * rotationDeg: from the right of the picture to the axis of rx, counter-clockwise as it is seen.
 */
export interface Ellipse {
  readonly cx: number
  readonly cy: number
  readonly rx: number
  readonly ry: number
  readonly rotationDeg: number
}
