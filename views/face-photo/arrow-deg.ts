/**
 * Where arrow A points, from 0 to below 180 degrees, so that it stays the same whichever way the
 * gap is taken to open; B points against it.
 */
export function arrowDeg(tiltDirectionDeg: number): number {
  return Math.round(((tiltDirectionDeg % 180) + 180) % 180) % 180
}
