import type { PathShape } from './drawing.ts'
import { boxPath, circlePath, outlinePath, type PointPx } from './path-data.ts'

/** How many turns have a mark of their own; later ones share the last. */
export const turnMarkCount = 5

const radiusPx = 3.8

/**
 * The mark of a reading by its turn: a full disc, a ring, an empty square, an empty triangle, and
 * a lozenge for every later turn. Told apart by outline alone.
 *
 * @param turnIndex from 0
 * @param at where it lies, px
 * @returns one shape
 * @example turnMark(0, { x: 5, y: 5 }).fill // ink
 */
export function turnMark(turnIndex: number, at: PointPx): PathShape {
  const { x, y } = at
  const r = radiusPx
  const outlines = [
    circlePath(at, r - 0.4),
    circlePath(at, r),
    boxPath({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }),
    corners([0, -r - 1, r + 0.6, r - 0.4, -r - 0.6, r - 0.4]),
    corners([0, -r - 1.2, r + 1.2, 0, 0, r + 1.2, -r - 1.2, 0]),
  ]
  const d = outlines[Math.min(turnIndex, turnMarkCount - 1)] as string
  return {
    kind: 'path',
    d,
    fill: turnIndex === 0 ? 'ink' : 'paper',
    stroke: 'ink',
    strokePx: 1.6,
    part: `reading ${turnIndex + 1}`,
  }

  function corners(places: readonly number[]): string {
    const points = Array.from({ length: places.length / 2 }, (_, i) => ({
      x: x + (places[2 * i] as number),
      y: y + (places[2 * i + 1] as number),
    }))
    return outlinePath(points, true)
  }
}

/** The closing reading: a cross, so that the first one is seen behind it. */
export function closingMark({ x, y }: PointPx): PathShape {
  const r = radiusPx + 0.8
  const stroke = (side: number): string =>
    outlinePath(
      [
        { x: x - r, y: y - side * r },
        { x: x + r, y: y + side * r },
      ],
      false,
    )
  return {
    kind: 'path',
    d: `${stroke(1)}${stroke(-1)}`,
    stroke: 'ink',
    strokePx: 2,
    part: 'closing',
  }
}
