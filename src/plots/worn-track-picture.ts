import type { Drawing, Shape } from './drawing.ts'
import { type LegendRow, legendLine, legendRowPx, legendRows } from './legend-rows.ts'
import { boxPath } from './path-data.ts'
import { roundPx } from './round-px.ts'

const noseTopPx = 26
const nosePx = 44
const facePx = 46
const barsTopPx = noseTopPx + nosePx + facePx + 44
const barRowPx = 40

export interface WornTrackPictureOptions {
  /** 300 to 700. */
  readonly widthPx: number
  readonly noseWidthMm: number
  readonly trackWidthMm: number
  /** Of the face that carries the track; null: not known, drawn wider than the track. */
  readonly faceWidthMm: number | null
  /** Track less nose; below 0 where the track is narrower. */
  readonly movementUm: number
  /** What surveys found that widens a track on this face; null: not surveyed. */
  readonly found: { readonly leastUm: number; readonly mostUm: number } | null
  readonly texts: {
    readonly nose: string
    readonly track: string
    readonly noseSwings: string
    readonly movement: string
    readonly found: string
  }
}

/**
 * The nose over the worn face, widths in one scale: the nose where it was nearest to one side and
 * dashed where it was nearest to the other, the track below it; under them two bars from one line,
 * by how much the track is wider and how much movement was found, hatched where it may add.
 *
 * @param options see above
 * @returns the drawing
 * @throws RangeError for a width out of range and widths that are not above 0
 */
export function wornTrackPicture(options: WornTrackPictureOptions): Drawing {
  const { widthPx, noseWidthMm, trackWidthMm, faceWidthMm, texts } = options
  if (!(widthPx >= 300 && widthPx <= 700)) {
    throw new RangeError(`wornTrackPicture requires widthPx from 300 to 700, got ${widthPx}`)
  }
  if (!(noseWidthMm > 0 && trackWidthMm > 0)) {
    throw new RangeError('wornTrackPicture requires widths above 0')
  }
  const widest = Math.max(noseWidthMm, trackWidthMm)
  const faceMm = Math.max(faceWidthMm ?? widest * 1.35, widest)
  const pxPerMm = (widthPx - 24) / faceMm
  const middle = widthPx / 2
  const box = (mm: number, y: number, height: number, shiftMm = 0): string =>
    boxPath({
      x: roundPx(middle + (shiftMm - mm / 2) * pxPerMm),
      y,
      width: roundPx(mm * pxPerMm),
      height,
    })
  const shift = Math.max(0, trackWidthMm - noseWidthMm) / 2
  const faceTopPx = noseTopPx + nosePx
  const rows = rowsOf(options)
  return {
    widthPx,
    heightPx: barsTopPx + barRowPx * 2 + legendRowPx * rows.length + 8,
    shapes: [
      area(box(faceMm, faceTopPx, facePx), 'faint', 'face'),
      area(box(trackWidthMm, faceTopPx, 9), 'accent', 'track'),
      area(box(noseWidthMm, noseTopPx, nosePx, -shift), 'half', 'nose'),
      {
        kind: 'path',
        d: box(noseWidthMm, noseTopPx, nosePx, shift),
        stroke: 'ink',
        strokePx: 1.4,
        dash: 'dashed',
        part: 'nose at the other side',
      },
      width(texts.nose, middle + -shift * pxPerMm, noseTopPx - 9),
      width(texts.track, middle, faceTopPx + facePx + 18),
      ...bars(options),
      ...legendRows(rows, barsTopPx + barRowPx * 2),
    ],
  }
}

function area(d: string, fill: 'accent' | 'half' | 'faint', part: string): Shape {
  return { kind: 'path', d, fill, stroke: 'ink', strokePx: 1.6, part }
}

function width(text: string, x: number, y: number): Shape {
  return { kind: 'text', x: roundPx(x), y, text, sizePx: 13, anchor: 'middle', tone: 'ink' }
}

/** Both bars begin at one line and share one scale. */
function bars({ widthPx, movementUm, found, texts }: WornTrackPictureOptions): readonly Shape[] {
  const left = 12
  const largest = Math.max(movementUm, found?.mostUm ?? 0)
  const pxPerUm = (widthPx - 2 * left) / (largest > 0 ? largest : 1)
  const bar = (
    um: number,
    y: number,
    look: { fill?: 'accent' | 'half'; dash?: 'dashed' },
    part: string,
  ): Shape => ({
    kind: 'path',
    d: boxPath({ x: left, y, width: roundPx(Math.max(1.5, um * pxPerUm)), height: 14 }),
    stroke: 'ink',
    strokePx: 1.4,
    part,
    ...look,
  })
  const word = (text: string, y: number): Shape => ({
    kind: 'text',
    x: left,
    y,
    text,
    sizePx: 13,
    anchor: 'start',
    tone: 'ink',
  })
  const [first, second] = [barsTopPx, barsTopPx + barRowPx]
  return [
    word(texts.movement, first),
    bar(Math.max(0, movementUm), first + 6, { fill: 'accent' }, 'movement'),
    word(texts.found, second),
    ...(found === null
      ? []
      : [
          bar(found.mostUm, second + 6, { dash: 'dashed' }, 'found at most'),
          bar(found.leastUm, second + 6, { fill: 'half' }, 'found'),
        ]),
  ]
}

function rowsOf({
  texts,
  trackWidthMm,
  noseWidthMm,
}: WornTrackPictureOptions): readonly LegendRow[] {
  if (trackWidthMm <= noseWidthMm) return []
  const sign = legendLine({ stroke: 'ink', strokePx: 1.4, dash: 'dashed' })
  return [{ text: texts.noseSwings, sign }]
}
