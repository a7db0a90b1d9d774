import type { Drawing, Shape } from './drawing.ts'
import { heightSteps } from './height-steps.ts'
import { outlinePath, type PointPx } from './path-data.ts'
import { roundPx } from './round-px.ts'

/** A line of a profile: its heights from left to right at even or given places. */
export interface ProfileLine {
  readonly points: readonly { readonly at: number; readonly heightUm: number }[]
  readonly strokePx: number
  readonly dash: 'solid' | 'dashed' | 'dotted'
  /** Written at the right end, behind a piece of the line. */
  readonly text: string
}

export interface ProfileFrame {
  readonly widthPx: number
  readonly heightPx: number
  /** Ends of the axis across. */
  readonly from: number
  readonly to: number
  readonly ticks: readonly { readonly at: number; readonly text: string }[]
  readonly lines: readonly ProfileLine[]
  readonly heightText: (heightUm: number) => string
  /** Lowest and highest of the axis, where two pictures share one; absent: those of the lines. */
  readonly lowUm?: number | undefined
  readonly highUm?: number | undefined
  /** Under the right end of the axis across, and over the axis of heights. */
  readonly acrossText: string
  readonly unitText: string
}

const left = 62
const top = 26
const bottom = 38
const textPx = 12
const letterPx = 6.8
const endRowPx = 14
const samplePx = 16

/**
 * A frame with heights upwards and lines in it, told apart by weight and dash and named at their
 * right ends, each name behind a piece of its line. The plane, height 0, is a line of its own.
 *
 * @param frame widthPx from 280 to 1200, heightPx from 140 to 800, from below to, one line or more
 * @returns the drawing
 * @throws RangeError outside these ranges
 */
export function profileFrame(frame: ProfileFrame): Drawing {
  const { widthPx, heightPx, from, to, lines } = frame
  if (!(widthPx >= 280 && widthPx <= 1200 && heightPx >= 140 && heightPx <= 800)) {
    throw new RangeError(
      `profileFrame requires widthPx from 280 and heightPx from 140, got ${widthPx}, ${heightPx}`,
    )
  }
  if (!(from < to && lines.length > 0)) {
    throw new RangeError(`profileFrame requires from below to and a line, got ${from}, ${to}`)
  }
  const range = rangeOf(frame)
  const right =
    Math.ceil(Math.max(...lines.map((line) => line.text.length)) * letterPx) + samplePx + 16
  const xOf = (at: number) => roundPx(left + ((at - from) / (to - from)) * (widthPx - left - right))
  const yOf = (heightUm: number) => {
    const share = (heightUm - range.lowUm) / (range.highUm - range.lowUm)
    return roundPx(heightPx - bottom - share * (heightPx - top - bottom))
  }
  const { levelsUm } = heightSteps(range, { mostCount: 6 })
  return {
    widthPx,
    heightPx,
    shapes: [
      ...levelsUm.flatMap((level) => heightTick(frame, level, xOf, yOf)),
      { kind: 'line', x1: left, y1: top, x2: left, y2: heightPx - bottom, stroke: 'ink' },
      ...frame.ticks.flatMap((tick) => acrossTick(tick, xOf, heightPx - bottom)),
      ...lines.map((line) => drawnLine(line, xOf, yOf)),
      ...endTexts(lines, roundPx(xOf(to) + 6), heightPx - bottom, yOf),
      axisText(frame.unitText, { x: 4, y: 14 }, 'start'),
      axisText(frame.acrossText, { x: xOf(to), y: heightPx - 4 }, 'end'),
    ],
  }
}

type Place = (value: number) => number

function rangeOf({ lines, lowUm, highUm }: ProfileFrame) {
  const heights = lines.flatMap((line) => line.points.map((point) => point.heightUm))
  const low = Math.min(0, lowUm ?? Math.min(...heights))
  const high = Math.max(0, highUm ?? Math.max(...heights))
  // A flat line still needs a height to be drawn in.
  const room = Math.max(0.06 * (high - low), 1e-3)
  return { lowUm: low - room, highUm: high + room }
}

function heightTick(frame: ProfileFrame, level: number, xOf: Place, yOf: Place): Shape[] {
  const y = yOf(level)
  const isPlane = level === 0
  return [
    {
      kind: 'line',
      x1: left,
      y1: y,
      x2: xOf(frame.to),
      y2: y,
      stroke: isPlane ? 'soft' : 'faint',
      strokePx: 1,
    },
    {
      kind: 'text',
      x: left - 6,
      y: roundPx(y + 4),
      text: frame.heightText(level),
      sizePx: textPx,
      anchor: 'end',
      tone: 'ink',
    },
  ]
}

function acrossTick(
  { at, text }: { readonly at: number; readonly text: string },
  xOf: Place,
  base: number,
): Shape[] {
  const x = xOf(at)
  return [
    { kind: 'line', x1: x, y1: base, x2: x, y2: base + 5, stroke: 'ink' },
    { kind: 'text', x, y: base + 18, text, sizePx: textPx, anchor: 'middle', tone: 'ink' },
  ]
}

function drawnLine({ points, strokePx, dash, text }: ProfileLine, xOf: Place, yOf: Place): Shape {
  const places = points.map(({ at, heightUm }): PointPx => ({ x: xOf(at), y: yOf(heightUm) }))
  return { kind: 'path', d: outlinePath(places, false), stroke: 'ink', strokePx, dash, part: text }
}

/** Names at the right ends, moved apart where lines end close together, the last above the axis. */
function endTexts(lines: readonly ProfileLine[], x: number, base: number, yOf: Place): Shape[] {
  const ends = lines
    .map((line) => ({ line, y: yOf(line.points.at(-1)?.heightUm ?? 0) + 4 }))
    .sort((a, b) => a.y - b.y)
  let above = Number.NEGATIVE_INFINITY
  return ends.flatMap(({ line, y }, index): Shape[] => {
    const lowest = base - endRowPx * (ends.length - 1 - index)
    const free = Math.min(lowest, Math.max(y, above + endRowPx))
    above = free
    return endText(line, x, roundPx(free))
  })
}

/** Which line is meant is seen where several end at one place, too. */
function endText({ text, strokePx, dash }: ProfileLine, x: number, y: number): Shape[] {
  const at = roundPx(y - 4)
  const [x1, x2] = [roundPx(x + 2), roundPx(x + 2 + samplePx)]
  return [
    { kind: 'line', x1, y1: at, x2, y2: at, stroke: 'ink', strokePx, dash },
    { kind: 'text', x: roundPx(x2 + 5), y, text, sizePx: textPx, anchor: 'start', tone: 'ink' },
  ]
}

function axisText(text: string, at: PointPx, anchor: 'start' | 'end'): Shape {
  return { kind: 'text', ...at, text, sizePx: textPx, anchor, tone: 'soft' }
}
