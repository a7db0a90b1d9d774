import { axisTexts } from './axis-texts.ts'
import type { Drawing, Shape } from './drawing.ts'
import { boxPath, circlePath } from './path-data.ts'
import { roundPx } from './round-px.ts'

export interface SpringLineOptions {
  /** At which all springs together press with nothing. */
  readonly freeLengthMm: number
  readonly loadPerMmN: number
  /** Of all springs together, as they were read; none where the rate is stated. */
  readonly points: readonly { readonly lengthMm: number; readonly loadN: number }[]
  readonly workingLengthMm: number
  /** With coils closed; null where it is not known. */
  readonly solidLengthMm: number | null
  /** The load that the design asks for; toleranceN to either side, null where it is not stated. */
  readonly design: { readonly loadN: number; readonly toleranceN: number | null } | null
  readonly widthPx: number
  /** As printed: the drawing rounds nothing itself. */
  readonly texts: {
    readonly lengthAxis: string
    readonly loadAxis: string
    readonly free: string
    readonly working: string
    readonly solid: string
    readonly load: string
    readonly design: string
  }
}

const plotHeightPx = 190
const topPx = 26
const sidePx = 14
const axisTitlePx = 18
const textPx = 12

/**
 * The load of springs against their length: their line from the free length up to the solid one,
 * what was read as rings, the working point full, the design's load as a dashed line in its band.
 * Longer is to the right, so that pressing goes to the left and up.
 *
 * @param options lengths in mm, loads in N, of all springs together; widthPx from 240 to 1200
 * @returns the drawing; lengths reach a tenth beyond what is shown on either side, loads from 0 to
 *   an eighth above the largest
 * @throws RangeError where a number is not finite or the width is out of range
 * Validity: it shows the numbers and judges nothing; left of the solid length no line is drawn.
 * @example springLine(options).widthPx // 320
 */
export function springLine(options: SpringLineOptions): Drawing {
  const { widthPx, texts, workingLengthMm, freeLengthMm, solidLengthMm, design } = options
  const { x, y, baseY, leftMm, atWork, largest } = scalesOf(options)
  const at = { x: x(workingLengthMm), y: y(atWork) }
  const axis = axisTexts(
    [
      { x: x(freeLengthMm), text: texts.free },
      { x: at.x, text: texts.working },
      ...(solidLengthMm === null ? [] : [{ x: x(solidLengthMm), text: texts.solid }]),
    ],
    { widthPx, y: baseY },
  )
  // Not above what is shown: cut off there it would be bent.
  const highestMm = freeLengthMm - largest / options.loadPerMmN
  const lineTo = Math.max(leftMm, solidLengthMm ?? leftMm, highestMm)
  const shapes: Shape[] = [
    ...designShapes(options, { x, y, leftMm }),
    ...(solidLengthMm === null ? [] : [solidWall(x(solidLengthMm), x(leftMm), baseY)]),
    { kind: 'line', x1: sidePx, y1: baseY, x2: widthPx - sidePx, y2: baseY, stroke: 'ink' },
    line(x(freeLengthMm), baseY, x(lineTo), y(loadAt(options, lineTo)), { strokePx: 2.5 }),
    line(at.x, baseY, at.x, at.y, { dash: 'dotted', strokePx: 1.5 }),
    ...options.points.map((one) => dot(x(one.lengthMm), y(one.loadN), 4, 'paper')),
    dot(at.x, at.y, 6, 'accent'),
    loadLabel(options, at, design === null ? null : y(design.loadN)),
    word(texts.loadAxis, sidePx, 13, widthPx, false),
    ...axis.shapes,
    word(texts.lengthAxis, widthPx, baseY + axis.heightPx + axisTitlePx, widthPx, false),
  ]
  return { widthPx, heightPx: baseY + axis.heightPx + axisTitlePx + 6, shapes }
}

interface Scales {
  readonly x: (mm: number) => number
  readonly y: (n: number) => number
  readonly leftMm: number
}

interface Shown {
  readonly baseY: number
  readonly atWork: number
  /** At the top of the drawing. */
  readonly largest: number
}

function scalesOf(options: SpringLineOptions): Scales & Shown {
  const { widthPx, workingLengthMm, freeLengthMm, solidLengthMm, points, design } = options
  if (!(widthPx >= 240 && widthPx <= 1200)) {
    throw new RangeError(`springLine requires widthPx from 240 to 1200, got ${widthPx}`)
  }
  const lengths = [
    workingLengthMm,
    freeLengthMm,
    ...(solidLengthMm === null ? [] : [solidLengthMm]),
    ...points.map((one) => one.lengthMm),
  ]
  const atWork = loadAt(options, workingLengthMm)
  const loads = [
    atWork,
    ...points.map((one) => one.loadN),
    ...(design === null ? [] : [design.loadN + (design.toleranceN ?? 0)]),
  ]
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)]
  const spare = Math.max((most - least) / 10, 0.01)
  const largest = Math.max(...loads, 1e-9) * 1.125
  if (![least, most, largest].every(Number.isFinite)) {
    throw new RangeError('springLine requires finite lengths and loads')
  }
  const leftMm = least - spare
  const perMm = (widthPx - 2 * sidePx) / (most + spare - leftMm)
  const baseY = topPx + plotHeightPx
  return {
    x: (mm) => roundPx(sidePx + (mm - leftMm) * perMm),
    y: (n) => roundPx(baseY - (n / largest) * plotHeightPx),
    leftMm,
    baseY,
    atWork,
    largest,
  }
}

function loadAt({ freeLengthMm, loadPerMmN }: SpringLineOptions, lengthMm: number): number {
  return Math.max(0, (freeLengthMm - lengthMm) * loadPerMmN)
}

function designShapes(options: SpringLineOptions, { y }: Scales): readonly Shape[] {
  const { design, widthPx, texts } = options
  if (design === null) return []
  const { loadN, toleranceN } = design
  const [left, right] = [sidePx, widthPx - sidePx]
  const top = y(loadN + (toleranceN ?? 0))
  const bottom = y(Math.max(0, loadN - (toleranceN ?? 0)))
  const box = { x: left, y: top, width: right - left, height: bottom - top }
  return [
    ...(toleranceN === null
      ? []
      : ([
          { kind: 'path', d: boxPath(box), fill: 'faint', stroke: 'soft', part: 'band' },
        ] as const)),
    line(left, y(loadN), right, y(loadN), { dash: 'dashed', strokePx: 1.5 }),
    {
      kind: 'text',
      x: right - 2,
      y: Math.max(top - 4, topPx - 8),
      text: texts.design,
      sizePx: textPx,
      anchor: 'end',
      tone: 'ink',
    },
  ]
}

/** No spring is shorter: a wall where its coils close. */
function solidWall(x: number, leftPx: number, baseY: number): Shape {
  const wallPx = 5
  const box = { x: Math.max(leftPx, x - wallPx), y: topPx, width: wallPx, height: baseY - topPx }
  return { kind: 'path', d: boxPath(box), fill: 'soft', part: 'solid' }
}

function line(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  drawn: { readonly dash?: 'dashed' | 'dotted'; readonly strokePx: number },
): Shape {
  return { kind: 'line', x1, y1, x2, y2, stroke: 'ink', ...drawn }
}

function dot(x: number, y: number, radius: number, fill: 'paper' | 'accent'): Shape {
  const d = circlePath({ x, y }, radius)
  return { kind: 'path', d, fill, stroke: 'ink', strokePx: 1.5, part: 'dot' }
}

/** Right above the point, where the line has gone down; clear of the dashed line of the design. */
function loadLabel(
  { widthPx, texts }: SpringLineOptions,
  at: { readonly x: number; readonly y: number },
  designY: number | null,
): Shape {
  const isCrossed = designY !== null && designY < at.y + 4 && designY > at.y - 20
  const y = roundPx(isCrossed ? designY - 5 : at.y - 6)
  return word(texts.load, at.x + 10 + texts.load.length * 3.3, y, widthPx, true)
}

/** Kept inside the drawing, whatever it says. */
function word(text: string, x: number, y: number, widthPx: number, isStrong: boolean): Shape {
  const half = (text.length * 6.6) / 2
  const middle = roundPx(Math.max(half + 2, Math.min(x, widthPx - half - 2)))
  const base = Math.max(13, y)
  return {
    kind: 'text',
    x: middle,
    y: base,
    text,
    sizePx: textPx,
    anchor: 'middle',
    tone: 'ink',
    isStrong,
  }
}
