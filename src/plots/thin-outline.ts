import type { PointPx } from './path-data.ts'

/**
 * A closed outline with the points left out that nobody would miss: none of those dropped lies
 * further than the tolerance from the outline that stays (Douglas and Peucker, 1973).
 *
 * @param points closed outline, three or more points, px
 * @param tolerancePx largest distance dropped, px, 0 or more
 * @returns the points kept, in order
 * @throws RangeError with fewer than three points
 * @example thinOutline([0, 1, 2, 1].map((x, at) => ({ x, y: at % 3 ? 0 : x })), 0.1).length // 3
 */
export function thinOutline(points: readonly PointPx[], tolerancePx: number): readonly PointPx[] {
  if (points.length < 3) {
    throw new RangeError(`thinOutline requires points from 3 to any, got ${points.length}`)
  }
  const first = points[0] as PointPx
  // A closed outline has no ends: cut it at the first point and at the one furthest from that.
  let far = 0
  points.forEach((point, index) => {
    const best = points[far] as PointPx
    if (distance(first, point) > distance(first, best)) far = index
  })
  const there = thinRun(points.slice(0, far + 1), tolerancePx)
  const back = thinRun([...points.slice(far), first], tolerancePx)
  return [...there.slice(0, -1), ...back.slice(0, -1)]
}

function thinRun(run: readonly PointPx[], tolerancePx: number): readonly PointPx[] {
  const a = run[0]
  const b = run.at(-1)
  if (!a || !b || run.length < 3) return run
  let worst = 0
  let worstPx = -1
  run.slice(1, -1).forEach((point, index) => {
    const offPx = distanceToSegment(point, a, b)
    if (offPx > worstPx) {
      worst = index + 1
      worstPx = offPx
    }
  })
  if (worstPx <= tolerancePx) return [a, b]
  const left = thinRun(run.slice(0, worst + 1), tolerancePx)
  return [...left.slice(0, -1), ...thinRun(run.slice(worst), tolerancePx)]
}

function distance(a: PointPx, b: PointPx): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function distanceToSegment(p: PointPx, a: PointPx, b: PointPx): number {
  const length2 = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
  if (length2 === 0) return distance(p, a)
  const share = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length2
  const t = Math.min(1, Math.max(0, share))
  return distance(p, { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) })
}
