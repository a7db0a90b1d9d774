import type { AlignmentPictureOptions, PictureTilt } from './alignment-picture-options.ts'
import type { Shape } from './drawing.ts'
import { boxPath, outlinePath } from './path-data.ts'
import { roundPx } from './round-px.ts'

export const sideViewHeightPx = 224
/** From the axis: shaft, bore, outside of the chamber. */
const shaftPx = 24
const seatPx = 52
const borePx = 60
const outsidePx = 84
/** The larger tilt is drawn this far out of square over the whole height. */
const tiltPx = 26

/** How large heights are drawn, px per um, over the circle that was swept. */
export function sideViewScale({ chamberFace, seatFace }: AlignmentPictureOptions): number {
  const largest = Math.max(chamberFace?.heightUm ?? 0, seatFace?.heightUm ?? 0)
  return tiltPx / (largest > 0 ? largest : 1)
}

/**
 * The side view of the combined picture, cut where the chamber face stands out most: the seal to
 * the left, the drive to the right, highest side on top. The face is drawn as far out of square as
 * it is, in the stated scale, beside a dashed line that is square; a wedge at the joint of the
 * chamber shows where a shim goes. A seat is drawn by the part of its tilt that lies in this cut.
 *
 * @param options see AlignmentPictureOptions
 * @param topPx where the view begins in the drawing, px
 * @returns the shapes; none where no face was surveyed
 */
export function alignmentSideView(
  options: AlignmentPictureOptions,
  topPx: number,
): readonly Shape[] {
  const { widthPx, chamberFace, seatFace } = options
  const cut = chamberFace ?? seatFace
  if (cut === null) return []
  const y0 = topPx + sideViewHeightPx / 2
  const pxPerUm = sideViewScale(options)
  const view: View = { y0, pxPerUm, faceX: widthPx * 0.5, jointX: widthPx * 0.8, options }
  return [
    ...(chamberFace === null ? [] : chamber(view, chamberFace)),
    {
      kind: 'path',
      d: boxPath({ x: 8, y: y0 - shaftPx, width: widthPx - 16, height: 2 * shaftPx }),
      fill: 'faint',
      stroke: 'ink',
      strokePx: 2,
      part: 'side shaft',
    },
    {
      kind: 'line',
      x1: 2,
      x2: widthPx - 2,
      y1: y0,
      y2: y0,
      stroke: 'soft',
      strokePx: 1,
      dash: 'dashed',
    },
    ...(seatFace === null ? [] : seat(view, seatFace, cut)),
    ...sides(view, cut),
  ]
}

interface View {
  readonly y0: number
  readonly pxPerUm: number
  readonly faceX: number
  readonly jointX: number
  readonly options: AlignmentPictureOptions
}

/** Above and below the shaft, its face out of square, and the machine that it is bolted to. */
function chamber(view: View, tilt: PictureTilt): readonly Shape[] {
  const { y0, pxPerUm, faceX, jointX, options } = view
  const half = (tilt.heightUm * pxPerUm) / 2
  // The highest side is on top and nearest to the seal, which is left.
  const faceAt = (y: number) => faceX - (half * (y0 - y)) / outsidePx
  const block = (near: number, far: number): string =>
    outlinePath(
      [
        { x: faceAt(y0 + near), y: y0 + near },
        { x: jointX, y: y0 + near },
        { x: jointX, y: y0 + far },
        { x: faceAt(y0 + far), y: y0 + far },
      ],
      true,
    )
  const thick = Math.max(5, half)
  const wedge = [
    { x: jointX, y: y0 + borePx - 4 },
    { x: jointX + (thick * (borePx + outsidePx)) / (2 * outsidePx), y: y0 + outsidePx + 3 },
    { x: jointX, y: y0 + outsidePx + 3 },
  ]
  const widthPx = options.widthPx - 8 - jointX
  const frame = `${boxPath({ x: jointX, y: y0 - outsidePx - 6, width: widthPx, height: outsidePx + 6 - borePx })}${boxPath({ x: jointX, y: y0 + borePx, width: widthPx, height: outsidePx + 6 - borePx })}`
  return [
    { kind: 'path', d: frame, fill: 'paper', stroke: 'soft', strokePx: 1.4, part: 'machine' },
    {
      kind: 'path',
      d: `${block(-borePx, -outsidePx)}${block(borePx, outsidePx)}`,
      fill: 'half',
      stroke: 'ink',
      strokePx: 1.8,
      part: 'chamber',
    },
    {
      kind: 'line',
      x1: roundPx(faceX - half),
      x2: roundPx(faceX - half),
      y1: y0 - outsidePx - 8,
      y2: y0 + outsidePx + 8,
      stroke: 'accent',
      strokePx: 1.6,
      dash: 'dashed',
    },
    {
      kind: 'path',
      d: outlinePath(wedge, true),
      fill: 'accent',
      stroke: 'accent',
      strokePx: 1,
      part: 'shim',
    },
  ]
}

/** The stationary seat before the chamber, its face left. */
function seat(view: View, tilt: PictureTilt, cut: PictureTilt): readonly Shape[] {
  const { y0, pxPerUm, faceX } = view
  const inCut = Math.cos(((tilt.highDeg - cut.highDeg) * Math.PI) / 180)
  const half = (tilt.heightUm * pxPerUm * inCut) / 2
  const right = faceX - tiltPx / 2 - 6
  const left = right - 34
  const faceAt = (y: number) => left - (half * (y0 - y)) / seatPx
  const block = (near: number, far: number): string =>
    outlinePath(
      [
        { x: faceAt(y0 + near), y: y0 + near },
        { x: right, y: y0 + near },
        { x: right, y: y0 + far },
        { x: faceAt(y0 + far), y: y0 + far },
      ],
      true,
    )
  return [
    {
      kind: 'path',
      d: `${block(-shaftPx - 5, -seatPx)}${block(shaftPx + 5, seatPx)}`,
      fill: 'paper',
      stroke: 'ink',
      strokePx: 1.8,
      part: 'seat',
    },
  ]
}

function sides({ y0, options }: View, cut: PictureTilt): readonly Shape[] {
  const { texts } = options
  const turned = (deg: number) => ((Math.round(deg) % 360) + 360) % 360
  const word = (text: string, y: number): Shape => ({
    kind: 'text',
    x: 8,
    y: roundPx(y),
    text,
    sizePx: 12,
    anchor: 'start',
    tone: 'ink',
    isStrong: true,
  })
  return [
    word(texts.high(turned(cut.highDeg)), y0 - outsidePx + 2),
    word(texts.low(turned(cut.highDeg + 180)), y0 + outsidePx + 6),
  ]
}
