import { axisTexts } from './axis-texts.ts'
import type { Drawing, Shape } from './drawing.ts'
import { normalCurve } from './normal-curve.ts'
import { boxPath, outlinePath } from './path-data.ts'

/** An interval to be drawn below the distribution, with the words beside it. */
export type PlottedInterval = {
  readonly low: number
  readonly high: number
  readonly label: string
  readonly dash: 'solid' | 'dashed'
}

export type DistributionPlotOptions = {
  readonly widthPx: number
  readonly histogram: {
    readonly from: number
    readonly to: number
    readonly counts: readonly number[]
  }
  readonly trials: number
  /** The normal distribution that the budget takes for the result; its curve is dashed. */
  readonly normal: { readonly mean: number; readonly standardDeviation: number }
  readonly intervals: readonly PlottedInterval[]
  /** Numbers at the ends and the middle of the axis. */
  readonly axis: readonly { readonly at: number; readonly text: string }[]
  readonly unitText: string
}

const plotHeightPx = 150
const rowPx = 34
const marginPx = 14
/** Between the numbers of the axis and the first interval. */
const gapPx = 16
/** How much higher than the trials the frame may get for the normal curve. */
const mostOfTrials = 1.6

/**
 * How often each result came out of the trials, as a filled outline; over it, dashed, the normal
 * curve that the budget takes for it, which runs out at the top where it is far too narrow; below,
 * each interval as a bar with its words.
 *
 * @param options widthPx from 240 to 1200; histogram with from below to
 * @returns the drawing
 * @throws RangeError outside these ranges
 */
export function distributionPlot(options: DistributionPlotOptions): Drawing {
  const { widthPx, histogram, normal, intervals } = options
  if (!(widthPx >= 240 && widthPx <= 1200)) {
    throw new RangeError(`distributionPlot requires widthPx from 240 to 1200, got ${widthPx}`)
  }
  if (!(histogram.from < histogram.to)) {
    throw new RangeError('distributionPlot requires a histogram with from below to')
  }
  const ends = intervals.flatMap(({ low, high }) => [low, high])
  const [low, high] = [Math.min(histogram.from, ...ends), Math.max(histogram.to, ...ends)]
  const room = (high - low) * 0.03
  const xOf = (value: number) =>
    marginPx + ((value - low + room) / (high - low + 2 * room)) * (widthPx - 2 * marginPx)
  const densities = densitiesOf(options)
  const highest = Math.max(...densities)
  const normalTop = 1 / (normal.standardDeviation * Math.sqrt(2 * Math.PI))
  const ceiling = Math.min(Math.max(highest, normalTop), mostOfTrials * highest)
  const yOf = (density: number) => 8 + plotHeightPx * (1 - density / ceiling)
  const base = yOf(0)
  const ticks = options.axis.map(({ at, text }) => ({ x: xOf(at), text }))
  const axis = axisTexts(ticks, { widthPx, y: base })
  const firstBar = base + axis.heightPx + gapPx
  return {
    widthPx,
    heightPx: firstBar + rowPx * intervals.length,
    shapes: [
      ...steps(options, densities, xOf, yOf),
      ...normalCurve({ ...normal, from: low - room, to: high + room, ceiling, xOf, yOf }),
      { kind: 'line', x1: marginPx, y1: base, x2: widthPx - marginPx, y2: base, stroke: 'ink' },
      ...axis.shapes,
      unit(options, base),
      ...intervals.flatMap((one, index) => bar(one, xOf, firstBar + rowPx * index + 6, widthPx)),
    ],
  }
}

type Place = (value: number) => number

function densitiesOf({ histogram, trials }: DistributionPlotOptions): number[] {
  const width = (histogram.to - histogram.from) / histogram.counts.length
  return histogram.counts.map((count) => count / trials / width)
}

function steps(
  { histogram: { from, to, counts } }: DistributionPlotOptions,
  densities: readonly number[],
  xOf: Place,
  yOf: Place,
): Shape[] {
  const width = (to - from) / counts.length
  const tops = densities.flatMap((density, index) => [
    { x: xOf(from + index * width), y: yOf(density) },
    { x: xOf(from + (index + 1) * width), y: yOf(density) },
  ])
  const closed = [{ x: xOf(from), y: yOf(0) }, ...tops, { x: xOf(to), y: yOf(0) }]
  return [
    { kind: 'path', d: outlinePath(closed, true), fill: 'faint' },
    { kind: 'path', d: outlinePath(closed, false), stroke: 'ink', strokePx: 1.2 },
  ]
}

function unit({ unitText, widthPx }: DistributionPlotOptions, base: number): Shape {
  const place = { x: widthPx - marginPx, y: base - 6, anchor: 'end' } as const
  return { kind: 'text', ...place, text: unitText, sizePx: 12, tone: 'soft' }
}

/** A bar with end strokes; its words stand below its left end, or where they still fit. */
function bar(interval: PlottedInterval, xOf: Place, y: number, widthPx: number): Shape[] {
  const { low, high, label, dash } = interval
  const [x1, x2] = [xOf(low), xOf(high)]
  const end = (x: number): Shape => ({
    kind: 'path',
    d: boxPath({ x: x - 1, y: y - 5, width: 2, height: 10 }),
    fill: 'ink',
  })
  const labelX = Math.max(marginPx, Math.min(x1, widthPx - marginPx - label.length * 6.2))
  return [
    { kind: 'line', x1, y1: y, x2, y2: y, stroke: 'ink', strokePx: 2.4, dash },
    end(x1),
    end(x2),
    { kind: 'text', x: labelX, y: y + 17, text: label, sizePx: 12, anchor: 'start', tone: 'ink' },
  ]
}
