import type { Shape } from './drawing.ts'
import { outlinePath } from './path-data.ts'
import { roundPx } from './round-px.ts'
import type { SurveyPolarOptions } from './survey-polar-options.ts'
import { closingMark, turnMark, turnMarkCount } from './turn-mark.ts'

const rowPx = 19
const textPx = 13
const leftPx = 8
const signPx = 34

/**
 * What the signs of a polar plot mean, and how large heights are drawn: a bar of a round length,
 * and by how much that is larger than the part where its size is known.
 *
 * @param options what the plot shows
 * @param plot where the words begin, px; px per um; radius of the middle circle, px
 * @returns the shapes and the height they take, px
 */
export function surveyPolarLegend(
  options: SurveyPolarOptions,
  plot: { readonly topPx: number; readonly pxPerUm: number; readonly middlePx: number },
): { readonly shapes: readonly Shape[]; readonly heightPx: number } {
  const rows: Row[] = [...rowsOf(options)]
  const barUm = roundLengthUm((plot.middlePx * 0.64) / plot.pxPerUm)
  const shapes = rows.flatMap((row, index) => {
    const y = roundPx(plot.topPx + 26 + rowPx * (index + 1))
    return [...row.sign(y - 4), words(row.text, leftPx + signPx + 8, y)]
  })
  return {
    shapes: [...scaleBar(options, plot, barUm), ...shapes],
    heightPx: 26 + rowPx * rows.length + 12,
  }
}

interface Row {
  readonly text: string
  readonly sign: (y: number) => readonly Shape[]
}

function rowsOf(options: SurveyPolarOptions): readonly Row[] {
  const { texts, turns, closing, fit, minimumZone, limitUm } = options
  const middle = leftPx + signPx / 2
  const shown = turns.slice(0, turnMarkCount)
  return [
    ...shown.map((_, index) => ({
      text: texts.turn(index),
      sign: (y: number) => [turnMark(index, { x: middle, y })],
    })),
    ...(closing.length === 0
      ? []
      : [{ text: texts.closing, sign: (y: number) => [closingMark({ x: middle, y })] }]),
    { text: texts.joined, sign: (y: number) => [line(y, { stroke: 'soft', strokePx: 1.1 })] },
    ...(fit === null
      ? []
      : [
          {
            text: texts.fitted,
            sign: (y: number) => [line(y, { stroke: 'accent', strokePx: 2.4 })],
          },
        ]),
    ...(fit === null || fit.directionDeg === null
      ? []
      : [{ text: texts.highest, sign: (y: number) => [pointer(middle, y)] }]),
    ...(minimumZone === null
      ? []
      : [
          {
            text: texts.minimumZone,
            sign: (y: number) => [line(y, { stroke: 'ink', strokePx: 1.3, dash: 'dotted' })],
          },
        ]),
    ...(limitUm === null
      ? []
      : [
          {
            text: texts.limit,
            sign: (y: number) => [line(y, { stroke: 'ink', strokePx: 1.4, dash: 'dashed' })],
          },
        ]),
  ]
}

type Pen = Pick<Extract<Shape, { kind: 'line' }>, 'stroke' | 'strokePx' | 'dash'>

function line(y: number, pen: Pen): Shape {
  return { kind: 'line', x1: leftPx, x2: leftPx + signPx, y1: y, y2: y, ...pen }
}

function pointer(x: number, y: number): Shape {
  const corners = [
    { x, y: y + 6 },
    { x: x - 5, y: y - 5 },
    { x: x + 5, y: y - 5 },
  ]
  return { kind: 'path', d: outlinePath(corners, true), fill: 'accent' }
}

function words(text: string, x: number, y: number): Shape {
  return { kind: 'text', x, y, text, sizePx: textPx, anchor: 'start', tone: 'ink' }
}

function scaleBar(
  { texts, sweptDiameterMm }: SurveyPolarOptions,
  { topPx, pxPerUm, middlePx }: { topPx: number; pxPerUm: number; middlePx: number },
  barUm: number,
): readonly Shape[] {
  const x2 = roundPx(leftPx + barUm * pxPerUm)
  const y = roundPx(topPx + 12)
  const upright = (x: number): Shape => ({
    kind: 'line',
    x1: x,
    x2: x,
    y1: y - 5,
    y2: y + 5,
    stroke: 'ink',
    strokePx: 1.6,
  })
  const times =
    sweptDiameterMm === null ? '' : texts.timesLarger((pxPerUm * 500 * sweptDiameterMm) / middlePx)
  return [
    { kind: 'line', x1: leftPx, x2, y1: y, y2: y, stroke: 'ink', strokePx: 1.6 },
    upright(leftPx),
    upright(x2),
    words([texts.scale(barUm), times].filter((one) => one !== '').join(', '), x2 + 8, y + 4),
  ]
}

/** The largest of 1, 2 and 5 times a power of ten that is no longer. */
function roundLengthUm(mostUm: number): number {
  const power = Math.floor(Math.log10(mostUm))
  const digit = [5, 2, 1].find((one) => Number(`${one}e${power}`) <= mostUm) ?? 1
  return Number(`${digit}e${power}`)
}
