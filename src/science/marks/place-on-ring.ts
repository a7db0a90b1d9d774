import { requireRange } from '../check/require-range.ts'
import type { Ellipse } from '../photo/ellipse.ts'
import { type RingMap, ringMap } from '../photo/ring-map.ts'

/** The edges of a land as they were set on a picture, and the ratio of the part's diameters. */
export interface MarkedEdges {
  readonly outer: Ellipse
  readonly inner: Ellipse
  /** Inner over outer diameter of the part. */
  readonly radiusRatio: number
}

/** From the centre and matrix at one share of the way from the inner (0) to the outer edge (1). */
function between(inner: RingMap, outer: RingMap, share: number): RingMap {
  const mix = (a: number, b: number) => a + (b - a) * share
  return {
    cx: mix(inner.cx, outer.cx),
    cy: mix(inner.cy, outer.cy),
    xx: mix(inner.xx, outer.xx),
    xy: mix(inner.xy, outer.xy),
    yy: mix(inner.yy, outer.yy),
  }
}

/** The point on the unit circle of a map: inside of it shorter than 1, outside longer. */
function within(map: RingMap, px: number, py: number) {
  const determinant = map.xx * map.yy - map.xy * map.xy
  const dx = px - map.cx
  const dy = map.cy - py
  const x = (map.yy * dx - map.xy * dy) / determinant
  const y = (map.xx * dy - map.xy * dx) / determinant
  return { x, y, length: Math.hypot(x, y) }
}

/**
 * Gives the place on a ring of outer radius 1 that a place in a picture shows. The inner edge in
 * the picture becomes the circle of radius radiusRatio, the outer one that of radius 1, and
 * between and a little beyond them the ellipses change evenly from one into the other.
 *
 * @param pixel x from the left, y from the top, in pixels
 * @param edges both as ellipses; radiusRatio: from 0.05 to 0.99
 * @returns x to the right, y upwards
 * @throws RangeError when the ratio lies outside its range or an axis is not above 0
 * Validity: for places on the land and off it by up to half of its width or a tenth of the outer
 *   radius, whichever is more; what lies further off is answered as lying there.
 * Source: parallel projection of circles; common practice, no source.
 * @example placeOnRing({ x: 30, y: 20 }, { outer: { cx: 20, cy: 20, rx: 10, ry: 10,
 *   rotationDeg: 0 }, inner: { cx: 20, cy: 20, rx: 8, ry: 8, rotationDeg: 0 },
 *   radiusRatio: 0.8 }).x // 1.0000
 */
export function placeOnRing(
  pixel: { readonly x: number; readonly y: number },
  edges: MarkedEdges,
): { readonly x: number; readonly y: number } {
  const { outer, inner, radiusRatio } = edges
  requireRange('placeOnRing', 'radiusRatio', radiusRatio, { from: 0.05, to: 0.99 })
  for (const value of [outer.rx, outer.ry, inner.rx, inner.ry]) {
    requireRange('placeOnRing', 'half axis', value, { from: Number.MIN_VALUE, to: 1e9 })
  }
  const [a, b] = [ringMap(inner), ringMap(outer)]
  const width = 1 - radiusRatio
  const at = (r: number) => within(between(a, b, (r - radiusRatio) / width), pixel.x, pixel.y)
  // The larger the ellipse, the shorter the point looks in it: one crossing of length 1.
  const beyond = Math.max(width / 2, 0.1)
  let low = Math.max(radiusRatio / 2, radiusRatio - beyond)
  let high = 1 + beyond
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2
    if (at(middle).length > 1) low = middle
    else high = middle
  }
  const r = (low + high) / 2
  const { x, y, length } = at(r)
  return length > 0 ? { x: (r * x) / length, y: (r * y) / length } : { x: 0, y: 0 }
}
