import type { AlignmentPictureOptions, PictureOffset } from './alignment-picture-options.ts'
import { arrowShapes } from './arrow-shapes.ts'
import { clockPlace } from './clock-place.ts'
import type { PathShape, Shape } from './drawing.ts'
import { boxPath, circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

/** Of the width of the drawing. */
const registerShare = 0.305
const sleeveShare = 0.19
const shaftShare = 0.148
/** The largest offset is drawn this long. */
const offsetShare = 0.095

/** How large offsets are drawn, px per um. */
export function endViewScale(options: AlignmentPictureOptions): number {
  const { shaft, sleeve, register, widthPx } = options
  const largest = Math.max(...[shaft, sleeve, register].map((one) => one?.offsetUm ?? 0))
  return (widthPx * offsetShare) / (largest > 0 ? largest : 1)
}

/**
 * The end view of the combined picture: shaft, sleeve and register seen from the seal, each where
 * its axis lies, offsets in one scale; dotted the circle on which the middle of the shaft runs;
 * dashed where the register lies after the move; a heavy arrow leads it there.
 *
 * @param options see AlignmentPictureOptions
 * @param topPx where the view begins in the drawing, px; it is as high as the drawing is wide
 * @returns the shapes
 */
export function alignmentEndView(
  options: AlignmentPictureOptions,
  topPx: number,
): readonly Shape[] {
  const { widthPx, shaft, sleeve, register } = options
  const centre = { x: widthPx / 2, y: topPx + widthPx / 2 }
  const at = clockPlace(centre, true)
  const pxPerUm = endViewScale(options)
  const middleOf = (one: PictureOffset | null): PointPx =>
    one === null ? centre : at(one.directionDeg, one.offsetUm * pxPerUm)
  const registerPx = widthPx * registerShare
  const circle = (middle: PointPx, px: number, look: Omit<PathShape, 'kind' | 'd'>): Shape => ({
    kind: 'path',
    d: circlePath(middle, px),
    ...look,
  })
  const wall = `${circlePath(middleOf(register), registerPx + 11)}${circlePath(middleOf(register), registerPx)}`
  return [
    ...(register === null
      ? []
      : ([
          { kind: 'path', d: wall, fill: 'half', stroke: 'ink', strokePx: 1.6, part: 'register' },
          circle(centre, registerPx, {
            stroke: 'accent',
            strokePx: 1.4,
            dash: 'dashed',
            part: 'after the move',
          }),
        ] satisfies Shape[])),
    ...(sleeve === null
      ? []
      : [
          circle(middleOf(sleeve), widthPx * sleeveShare, {
            fill: 'paper',
            stroke: 'ink',
            strokePx: 1.6,
            part: 'sleeve',
          }),
        ]),
    circle(middleOf(shaft), widthPx * shaftShare, {
      fill: 'faint',
      stroke: 'ink',
      strokePx: 2,
      part: 'shaft',
    }),
    ...runOut(options, centre, middleOf(shaft), pxPerUm),
    axisCross(centre),
    ...(register === null ? [] : moveShapes(options, register, { centre, at, pxPerUm })),
    ...angles(options, at),
  ]
}

/** Where the middle of the shaft runs, and where it is when the mark is on top. */
function runOut(
  { shaft }: AlignmentPictureOptions,
  centre: PointPx,
  middle: PointPx,
  pxPerUm: number,
): readonly Shape[] {
  const radiusPx = (shaft?.offsetUm ?? 0) * pxPerUm
  if (shaft === null || radiusPx < 0.5) return []
  return [
    {
      kind: 'path',
      d: circlePath(centre, radiusPx),
      stroke: 'ink',
      strokePx: 1.6,
      dash: 'dotted',
      part: 'run-out circle',
    },
    { kind: 'path', d: circlePath(middle, 2.6), fill: 'ink', part: 'middle of the shaft' },
  ]
}

function axisCross({ x, y }: PointPx): Shape {
  const level = [
    { x: x - 9, y },
    { x: x + 9, y },
  ]
  const upright = [
    { x, y: y - 9 },
    { x, y: y + 9 },
  ]
  const d = `${outlinePath(level, false)}${outlinePath(upright, false)}`
  return { kind: 'path', d, stroke: 'ink', strokePx: 1.3, part: 'axis' }
}

/** From the middle of the register to the axis; beside it how far. */
function moveShapes(
  { widthPx, texts }: AlignmentPictureOptions,
  register: PictureOffset,
  view: {
    readonly centre: PointPx
    readonly at: (angleDeg: number, radiusPx: number) => PointPx
    readonly pxPerUm: number
  },
): readonly Shape[] {
  const { at, pxPerUm } = view
  const from = at(register.directionDeg, register.offsetUm * pxPerUm)
  const style = { tone: 'accent', strokePx: 3.4, headPx: 13, part: 'move' } as const
  const towards = register.directionDeg + 180
  // The same way again outside, where nothing lies over it.
  const outer = [widthPx * 0.215, widthPx * 0.29].map((px) => at(towards, px)) as [PointPx, PointPx]
  const label = at(register.directionDeg, widthPx * 0.25)
  const text = texts.amount(register.offsetUm)
  const half = text.length * 3.6 + 4
  return [
    { kind: 'path', d: circlePath(from, 3), fill: 'accent', part: 'middle of the register' },
    ...arrowShapes(from, view.centre, style),
    ...arrowShapes(outer[0], outer[1], { ...style, strokePx: 5, headPx: 17, part: 'way' }),
    {
      kind: 'path',
      d: boxPath({ x: label.x - half, y: label.y - 9, width: 2 * half, height: 18 }),
      fill: 'paper',
    },
    {
      kind: 'text',
      x: label.x,
      y: roundPx(label.y + 5),
      text,
      sizePx: 14,
      anchor: 'middle',
      tone: 'accent',
      isStrong: true,
    },
  ]
}

function angles(
  { widthPx, texts }: AlignmentPictureOptions,
  at: (angleDeg: number, radiusPx: number) => PointPx,
): readonly Shape[] {
  const r = widthPx * 0.5 - 15
  return [0, 90, 180, 270].map((deg): Shape => {
    const place = at(deg, r)
    return {
      kind: 'text',
      x: place.x,
      y: roundPx(place.y + 4),
      text: deg === 0 ? texts.mark : texts.angle(deg),
      sizePx: 11,
      anchor: 'middle',
      tone: 'soft',
      isStrong: deg === 0,
    }
  })
}
