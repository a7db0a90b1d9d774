import type { Shape } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'

/**
 * A dial indicator whose tip touches a place: a stem from the tip and a round case with a needle.
 *
 * @param tip where it touches, px
 * @param towards where the case stands, as an angle in the drawing: 0 above the tip, 90 right of it
 * @param sizePx radius of the case, px, above 0
 * @returns the shapes
 */
export function indicatorSign(tip: PointPx, towards: number, sizePx: number): readonly Shape[] {
  const angle = (towards * Math.PI) / 180
  const [ux, uy] = [Math.sin(angle), -Math.cos(angle)]
  const along = (px: number): PointPx => ({ x: tip.x + ux * px, y: tip.y + uy * px })
  const stemPx = sizePx * 0.9
  const middle = along(stemPx + sizePx)
  const needle = { x: middle.x + sizePx * 0.42, y: middle.y - sizePx * 0.5 }
  return [
    {
      kind: 'path',
      d: outlinePath([tip, along(stemPx + 1)], false),
      stroke: 'ink',
      strokePx: Math.max(2, sizePx * 0.22),
      part: 'stem',
    },
    {
      kind: 'path',
      d: circlePath(middle, sizePx),
      fill: 'paper',
      stroke: 'ink',
      strokePx: 2,
      part: 'case',
    },
    {
      kind: 'path',
      d: outlinePath([middle, needle], false),
      stroke: 'ink',
      strokePx: 1.6,
      part: 'needle',
    },
    { kind: 'path', d: circlePath(tip, 2.2), fill: 'ink', part: 'tip' },
  ]
}
