/** How an edge departs from an ellipse: mean, and one and two waves around. */
export type EdgeWave = readonly [number, number, number, number, number]

/**
 * Gives the departure of an edge from its ellipse in one direction.
 *
 * offset = s0 + a cos t + b sin t + c cos 2t + d sin 2t
 *
 * @param wave s0, a, b, c, d, in units of the radius
 * @param angle t, in radians
 * @returns units of the radius
 * Source: a small shift, stretch and turn of an ellipse, to first order.
 * @example edgeWave([1, 2, 0, 3, 0], 0) // 6
 */
export function edgeWave(wave: EdgeWave, angle: number): number {
  const c = Math.cos(angle)
  const s = Math.sin(angle)
  const [s0, a, b, double, twice] = wave
  return s0 + a * c + b * s + double * (c * c - s * s) + twice * 2 * s * c
}
