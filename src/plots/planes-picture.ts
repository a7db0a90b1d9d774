import { checkMark } from './check-mark.ts'
import type { Drawing, Shape } from './drawing.ts'
import { indicatorSign } from './indicator-sign.ts'
import { boxPath, circlePath, outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

const sidePx = 34
const topPx = 62
const shaftPx = 34
const heightPx = 178

export interface PlanesPictureOptions {
  /** 280 to 900. */
  readonly widthPx: number
  readonly place: 'machine' | 'between-centres' | 'vee-blocks'
  /** Along the shaft, one or more. */
  readonly planesMm: readonly number[]
  readonly doneIndexes: readonly number[]
  /** The plane that is read now; null: all done. */
  readonly nextIndex: number | null
  readonly texts: {
    readonly plane: (index: number) => string
    readonly positionMm: (mm: number) => string
  }
}

/**
 * The shaft from the side in its centres, vee-blocks or bearings, with a line at every plane where
 * it is swept: those done ticked, the one to sweep now with the indicator on it.
 *
 * @param options see above
 * @returns the drawing, 178 px high
 * @throws RangeError for a width out of range, and without planes
 * Validity: planes lie in proportion to each other, supports stand at the ends wherever they are.
 */
export function planesPicture(options: PlanesPictureOptions): Drawing {
  const { widthPx, planesMm, nextIndex } = options
  if (!(widthPx >= 280 && widthPx <= 900)) {
    throw new RangeError(`planesPicture requires widthPx from 280 to 900, got ${widthPx}`)
  }
  if (planesMm.length === 0) throw new RangeError('planesPicture requires planes from 1, got 0')
  const [low, high] = [Math.min(...planesMm), Math.max(...planesMm)]
  const [from, to] = [sidePx + 40, widthPx - sidePx - 40]
  const xOf = (mm: number): number =>
    roundPx(high > low ? from + ((mm - low) / (high - low)) * (to - from) : (from + to) / 2)
  const next = nextIndex === null ? undefined : planesMm[nextIndex]
  return {
    widthPx,
    heightPx,
    shapes: [
      ...supports(options),
      shaft(widthPx),
      ...planesMm.flatMap((mm, index) => planeShapes(options, index, xOf(mm))),
      ...(next === undefined ? [] : indicatorSign({ x: xOf(next), y: topPx }, 0, 13)),
    ],
  }
}

function shaft(widthPx: number): Shape {
  const box = { x: sidePx, y: topPx, width: widthPx - 2 * sidePx, height: shaftPx }
  return {
    kind: 'path',
    d: boxPath(box),
    fill: 'faint',
    stroke: 'ink',
    strokePx: 2,
    part: 'shaft',
  }
}

/** Points into the ends, vees from below, or bearings round it. */
function supports({ place, widthPx }: PlanesPictureOptions): readonly Shape[] {
  const middle = topPx + shaftPx / 2
  const bottom = topPx + shaftPx
  const ends = [sidePx, widthPx - sidePx] as const
  const look = { fill: 'half', stroke: 'ink', strokePx: 1.4, part: place } as const
  const area = (points: readonly PointPx[]): Shape => ({
    kind: 'path',
    d: outlinePath(points, true),
    ...look,
  })
  if (place === 'between-centres') {
    return ends.map((x, i) => {
      const out = i === 0 ? -1 : 1
      return area([
        { x: x - out * 6, y: middle },
        { x: x + out * 26, y: middle - 13 },
        { x: x + out * 26, y: middle + 13 },
      ])
    })
  }
  if (place === 'vee-blocks') {
    return ends.map((x, i) => {
      const inwards = x + (i === 0 ? 18 : -18)
      return area([
        { x: inwards - 17, y: bottom - 8 },
        { x: inwards, y: bottom + 10 },
        { x: inwards + 17, y: bottom - 8 },
        { x: inwards + 17, y: bottom + 24 },
        { x: inwards - 17, y: bottom + 24 },
      ])
    })
  }
  return ends.map((x, i) => {
    const left = i === 0 ? x - 2 : x - 22
    return { kind: 'path', d: boxPath({ x: left, y: topPx - 10, width: 24, height: 54 }), ...look }
  })
}

function planeShapes(options: PlanesPictureOptions, index: number, x: number): readonly Shape[] {
  const { doneIndexes, nextIndex, texts, planesMm } = options
  const isNext = nextIndex === index
  const isDone = doneIndexes.includes(index) && !isNext
  const y = topPx + shaftPx + 38
  const word = (text: string, at: number, isStrong: boolean): Shape => ({
    kind: 'text',
    x,
    y: at,
    text,
    sizePx: 12,
    anchor: 'middle',
    tone: isStrong ? 'paper' : 'ink',
    isStrong,
  })
  const sign: Shape = isDone
    ? { kind: 'path', d: checkMark({ x, y }, 9), stroke: 'ink', strokePx: 2.2, part: 'done' }
    : word(texts.plane(index), y + 4, isNext)
  return [
    {
      kind: 'line',
      x1: x,
      x2: x,
      y1: topPx,
      y2: topPx + shaftPx + 28,
      stroke: isNext ? 'accent' : 'ink',
      strokePx: isNext ? 3 : 1.2,
    },
    {
      kind: 'path',
      d: circlePath({ x, y }, isNext ? 12 : 10),
      fill: isNext ? 'accent' : 'paper',
      stroke: isNext ? 'accent' : 'ink',
      strokePx: 1.4,
      part: isNext ? 'next' : isDone ? 'ticked' : 'waiting',
    },
    sign,
    word(texts.positionMm(planesMm[index] as number), y + 28 + (index % 2) * 13, false),
  ]
}
