import type { Ellipse } from '../science/photo/ellipse.ts'

/** From the normal, degrees: a circle that is seen obliquely is as much shorter one way as the
 * cosine says. */
export function angleOfView({ rx, ry }: Ellipse): number {
  return (Math.acos(Math.min(rx, ry) / Math.max(rx, ry)) * 180) / Math.PI
}
