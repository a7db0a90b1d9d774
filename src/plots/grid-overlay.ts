import { doubledLine } from './doubled-line.ts'
import type { Drawing } from './drawing.ts'
import { outlinePath, type PointPx } from './path-data.ts'

/** A grid of straight lines over a photograph, in its pixels. */
export interface GridOverlay {
  readonly widthPx: number
  readonly heightPx: number
  /** Of the lines, counter-clockwise from the right. */
  readonly directionDeg: number
  readonly spacingPx: number
  /** Of the first line from the middle of the photograph, upwards for lines to the right. */
  readonly offsetPx: number
}

/** More would be a grey area, and are not drawn. */
const mostLines = 400

/**
 * The lines of a grid, to be laid over the photograph that it was read on.
 *
 * @param grid spacingPx: above 0
 * @returns the drawing, as large as the photograph; empty where more than 400 lines would be drawn
 * @throws RangeError for a spacing of 0 or below
 */
export function gridOverlay(grid: GridOverlay): Drawing {
  const { widthPx, heightPx, directionDeg, spacingPx, offsetPx } = grid
  const reachPx = Math.hypot(widthPx, heightPx) / 2
  if (!(spacingPx > 0)) {
    throw new RangeError(`gridOverlay requires spacingPx above 0, got ${spacingPx}`)
  }
  if ((2 * reachPx) / spacingPx > mostLines) return { widthPx, heightPx, shapes: [] }
  const turn = (directionDeg * Math.PI) / 180
  const at = (along: number, across: number): PointPx => ({
    x: widthPx / 2 + along * Math.cos(turn) - across * Math.sin(turn),
    y: heightPx / 2 - (along * Math.sin(turn) + across * Math.cos(turn)),
  })
  const [first, last] = [
    Math.ceil((-reachPx - offsetPx) / spacingPx),
    Math.floor((reachPx - offsetPx) / spacingPx),
  ]
  const strokePx = Math.max(1, reachPx / 500)
  const lines = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => {
    const across = offsetPx + (first + k) * spacingPx
    return clipped(at(-reachPx, across), at(reachPx, across), grid)
  })
  return {
    widthPx,
    heightPx,
    shapes: lines.flatMap((d) => (d === '' ? [] : doubledLine(d, strokePx))),
  }
}

/** The piece of a line that lies in the picture; '' where none does. */
function clipped(from: PointPx, to: PointPx, { widthPx, heightPx }: GridOverlay): string {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const sides = [
    { toward: dx, room: widthPx - from.x },
    { toward: -dx, room: from.x },
    { toward: dy, room: heightPx - from.y },
    { toward: -dy, room: from.y },
  ]
  let [start, end] = [0, 1]
  for (const { toward, room } of sides) {
    if (toward === 0 && room < 0) return ''
    if (toward > 0) end = Math.min(end, room / toward)
    if (toward < 0) start = Math.max(start, room / toward)
  }
  if (!(start < end)) return ''
  const on = (share: number) => ({ x: from.x + share * dx, y: from.y + share * dy })
  return outlinePath([on(start), on(end)], false)
}
