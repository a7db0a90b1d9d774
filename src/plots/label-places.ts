import type { PointPx } from './path-data.ts'

/** A line that wants a text somewhere along it. */
export interface LabelledLine {
  readonly points: readonly PointPx[]
  readonly text: string
}

/** A text with the box that it takes. */
export interface PlacedLabel {
  readonly text: string
  /** Middle of the text. */
  readonly at: PointPx
  readonly widthPx: number
}

/** Digits of 11 px are so wide at most. */
const letterPx = 6
const paddingPx = 3
export const labelHeightPx = 13
/** Every so many points of a line a place is tried. */
const every = 2

/**
 * Places one text on each line, where it is in the way of no other text and of no mark, as far
 * from all of them as it can; a line without such a place gets none.
 *
 * @param lines in the order in which they choose
 * @param taken boxes of marks that are there already
 * @param isFree whether a place is inside the picture's area
 * @returns the texts that found a place
 * @example labelPlaces([{ points: [{ x: 9, y: 9 }], text: '1' }], [], () => true)[0].at.x // 9
 */
export function labelPlaces(
  lines: readonly LabelledLine[],
  taken: readonly PlacedLabel[],
  isFree: (point: PointPx) => boolean,
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = []
  for (const { points, text } of lines) {
    const widthPx = text.length * letterPx + 2 * paddingPx
    const others = [...taken, ...placed]
    let best: { at: PointPx; room: number } | undefined
    for (let i = 0; i < points.length; i += every) {
      const at = points[i] as PointPx
      const corners = [-1, 1].flatMap((sx) =>
        [-1, 1].map((sy) => ({
          x: at.x + (sx * widthPx) / 2,
          y: at.y + (sy * labelHeightPx) / 2,
        })),
      )
      if (!corners.every(isFree)) continue
      const room = Math.min(200, ...others.map((other) => gap(at, widthPx, other)))
      if (room > 0 && room > (best?.room ?? 0)) best = { at, room }
    }
    if (best !== undefined) placed.push({ text, at: best.at, widthPx })
  }
  return placed
}

/** Pixels between two boxes; 0 or less where they touch. */
function gap(at: PointPx, widthPx: number, other: PlacedLabel): number {
  const across = Math.abs(at.x - other.at.x) - (widthPx + other.widthPx) / 2
  const along = Math.abs(at.y - other.at.y) - labelHeightPx
  return Math.max(across, along)
}
