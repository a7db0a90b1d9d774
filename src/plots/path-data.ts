import { roundPx } from './round-px.ts'

export interface PointPx {
  readonly x: number
  readonly y: number
}

const pair = (p: PointPx): string => `${roundPx(p.x)} ${roundPx(p.y)}`

/**
 * The outline through some points as path data, straight from each to the next.
 *
 * @param points two or more points, px
 * @param isClosed whether the last joins the first
 * @returns path data of M, L and Z
 * @throws RangeError with fewer than two points
 * @example outlinePath([{ x: 0, y: 0 }, { x: 4, y: 3 }], false) // M0 0L4 3
 */
export function outlinePath(points: readonly PointPx[], isClosed: boolean): string {
  if (points.length < 2) {
    throw new RangeError(`outlinePath requires points from 2 to any, got ${points.length}`)
  }
  return `M${points.map(pair).join('L')}${isClosed ? 'Z' : ''}`
}

/**
 * A full circle as path data: two half arcs, since one arc cannot end where it starts.
 *
 * @param centre centre, px
 * @param radiusPx radius, px, above 0
 * @returns path data of M, A and Z
 * @example circlePath({ x: 5, y: 5 }, 2) // M3 5A2 2 0 1 1 7 5A2 2 0 1 1 3 5Z
 */
export function circlePath(centre: PointPx, radiusPx: number): string {
  const r = roundPx(radiusPx)
  const left = pair({ x: centre.x - radiusPx, y: centre.y })
  const right = pair({ x: centre.x + radiusPx, y: centre.y })
  return `M${left}A${r} ${r} 0 1 1 ${right}A${r} ${r} 0 1 1 ${left}Z`
}

/**
 * An upright rectangle as path data.
 *
 * @param box left, top, width and height, px
 * @returns path data of M, L and Z
 * @example boxPath({ x: 1, y: 2, width: 3, height: 4 }) // M1 2L4 2L4 6L1 6Z
 */
export function boxPath(box: {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}): string {
  const right = box.x + box.width
  const bottom = box.y + box.height
  const corners = [
    { x: box.x, y: box.y },
    { x: right, y: box.y },
    { x: right, y: bottom },
    { x: box.x, y: bottom },
  ]
  return outlinePath(corners, true)
}
