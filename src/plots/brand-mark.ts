import type { Drawing } from './drawing.ts'
import { circlePath, outlinePath, type PointPx } from './path-data.ts'

/**
 * Our mark: the ring of a face with three straight light bands across it, a flat face.
 *
 * @param sizePx width and height, px, 12 to 1000
 * @returns the drawing
 * @throws RangeError outside this range
 * @example brandMark(32).heightPx // 32
 */
export function brandMark(sizePx: number): Drawing {
  if (!(sizePx >= 12 && sizePx <= 1000)) {
    throw new RangeError(`brandMark requires sizePx from 12 to 1000, got ${sizePx}`)
  }
  const centre = { x: sizePx / 2, y: sizePx / 2 }
  const rim = 0.48 * sizePx
  const bore = 0.19 * sizePx
  const halfBand = 0.038 * sizePx
  const bands = [-0.255, 0, 0.255].flatMap((place) =>
    [-1, 1].map((side) => bandPiece(centre, rim, bore, place * sizePx, halfBand, side)),
  )
  return {
    widthPx: sizePx,
    heightPx: sizePx,
    shapes: [
      { kind: 'path', d: `${circlePath(centre, rim)}${circlePath(centre, bore)}`, fill: 'accent' },
      { kind: 'path', d: [...new Set(bands)].join(''), fill: 'paper' },
    ],
  }
}

/** One half of a level band, from the middle (or the bore) out over the rim. */
function bandPiece(
  centre: PointPx,
  rim: number,
  bore: number,
  offset: number,
  half: number,
  side: number,
): string {
  const reach = (radius: number, y: number): number => Math.sqrt(Math.max(0, radius ** 2 - y ** 2))
  const corner = (radius: number, y: number): PointPx => ({
    x: centre.x + side * reach(radius, y),
    y: centre.y + y,
  })
  const low = offset - half
  const high = offset + half
  return outlinePath(
    [corner(bore, low), corner(rim, low), corner(rim, high), corner(bore, high)],
    true,
  )
}
