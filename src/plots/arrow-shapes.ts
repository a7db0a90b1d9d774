import type { Shape, Tone } from './drawing.ts'
import { outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

/**
 * An arrow from one place to another: a shaft and a full head, on a ground of paper so that it
 * stands out from what it crosses. One shorter than its head is the head alone.
 *
 * @param from where it begins, px
 * @param to where its tip is, px
 * @param style tone; width of the shaft, px; length of the head, px; `part` names both shapes
 * @returns the shapes; none where it has no length
 * @example arrowShapes({ x: 0, y: 0 }, { x: 9, y: 0 }, style).length // 3
 */
export function arrowShapes(
  from: PointPx,
  to: PointPx,
  style: {
    readonly tone: Tone
    readonly strokePx: number
    readonly headPx: number
    readonly part: string
  },
): readonly Shape[] {
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y)
  if (lengthPx < 0.5) return []
  const { tone, strokePx, part } = style
  const [ux, uy] = [(to.x - from.x) / lengthPx, (to.y - from.y) / lengthPx]
  const headPx = Math.min(style.headPx, lengthPx)
  const half = headPx * 0.42
  const foot = { x: to.x - ux * headPx, y: to.y - uy * headPx }
  const barb = (side: number): PointPx => ({
    x: roundPx(foot.x + side * uy * half),
    y: roundPx(foot.y - side * ux * half),
  })
  const head: Shape = {
    kind: 'path',
    d: outlinePath([to, barb(1), barb(-1)], true),
    fill: tone,
    stroke: 'paper',
    strokePx: 1,
    part: `${part} head`,
  }
  if (lengthPx <= headPx + 0.5) return [head]
  const d = outlinePath([from, foot], false)
  return [
    { kind: 'path', d, stroke: 'paper', strokePx: strokePx + 3, part: `${part} ground` },
    { kind: 'path', d, stroke: tone, strokePx, part },
    head,
  ]
}
