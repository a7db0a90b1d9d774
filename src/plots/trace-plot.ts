import { peaksByColumn } from '../science/traces/peaks-by-column.ts'
import type { Drawing, Shape } from './drawing.ts'
import { boxPath } from './path-data.ts'
import { roundPx } from './round-px.ts'

export interface TracePlotOptions {
  /** Rising; as many values, NaN where nothing was read. */
  readonly timesS: ArrayLike<number>
  readonly values: ArrayLike<number>
  readonly fromS: number
  readonly toS: number
  /** A line to draw beside it, as its values at both ends of the window; null for none. */
  readonly fitted: { readonly fromValue: number; readonly toValue: number } | null
  readonly widthPx: number
  /** As printed: the drawing rounds nothing itself. */
  readonly texts: {
    readonly title: string
    readonly least: (value: number) => string
    readonly from: string
    readonly to: string
  }
}

const plotHeightPx = 130
const topPx = 26
const leftPx = 78
const rightPx = 12
const textPx = 12

/**
 * A trace over time: of every column of pixels the lowest and the highest reading, joined to its
 * neighbours, so that no peak is lost; what is fitted as a dashed line.
 *
 * @param options window with toS after fromS; widthPx from 240 to 1600
 * @returns the drawing; values reach from the lowest to the highest of the window
 * @throws RangeError where the width or the window is out of range
 * Validity: it shows the readings and judges nothing.
 * @example tracePlot(options).widthPx // 720
 */
export function tracePlot(options: TracePlotOptions): Drawing {
  const { timesS, values, fromS, toS, fitted, widthPx, texts } = options
  if (!(widthPx >= 240 && widthPx <= 1600)) {
    throw new RangeError(`tracePlot requires widthPx from 240 to 1600, got ${widthPx}`)
  }
  const columns = Math.floor(widthPx - leftPx - rightPx)
  const shown = peaksByColumn({ timesS, values }, { fromS, toS, columns })
  const ends = fitted === null ? [] : [fitted.fromValue, fitted.toValue]
  const least = [...shown.map((one) => one.low), ...ends].reduce((a, b) => Math.min(a, b), Infinity)
  const most = [...shown.map((one) => one.high), ...ends].reduce(
    (a, b) => Math.max(a, b),
    -Infinity,
  )
  const baseY = topPx + plotHeightPx
  const spread = most > least ? most - least : 1
  const y = (value: number) =>
    roundPx(
      most > least ? baseY - ((value - least) / spread) * plotHeightPx : baseY - plotHeightPx / 2,
    )
  const right = leftPx + columns
  const frame = { x: leftPx, y: topPx, width: columns, height: plotHeightPx }
  const shapes: Shape[] = [
    { kind: 'path', d: boxPath(frame), stroke: 'faint' },
    ...(shown.length === 0 ? [] : [{ kind: 'path', d: pathOf(shown, y), stroke: 'ink' } as const]),
    ...(fitted === null
      ? []
      : [
          {
            kind: 'line',
            x1: leftPx,
            y1: y(fitted.fromValue),
            x2: right,
            y2: y(fitted.toValue),
            stroke: 'accent',
            strokePx: 2,
            dash: 'dashed',
          } as const,
        ]),
    word(texts.title, leftPx, 16, 'start', true),
    ...(shown.length === 0
      ? []
      : [
          word(texts.least(most), leftPx - 8, topPx + textPx - 2, 'end'),
          word(texts.least(least), leftPx - 8, baseY, 'end'),
        ]),
    word(texts.from, leftPx, baseY + textPx + 6, 'start'),
    word(texts.to, right, baseY + textPx + 6, 'end'),
  ]
  return { widthPx, heightPx: baseY + textPx + 12, shapes }
}

type Columns = ReturnType<typeof peaksByColumn>

/** Each column from its first reading over its lowest and highest to its last. */
function pathOf(shown: Columns, y: (value: number) => number): string {
  const points = shown.flatMap(({ column, first, low, high, last }) =>
    [first, low, high, last].map((value) => `${leftPx + column} ${y(value)}`),
  )
  const distinct = points.filter((one, i) => one !== points[i - 1])
  return `M ${distinct.join(' L ')}`
}

function word(
  text: string,
  x: number,
  y: number,
  anchor: 'start' | 'end',
  isStrong = false,
): Shape {
  return {
    kind: 'text',
    x,
    y,
    text,
    sizePx: textPx,
    anchor,
    tone: isStrong ? 'ink' : 'soft',
    isStrong,
  }
}
