import type { Shape } from './drawing.ts'
import { type LegendRow, legendLine, legendRowPx, legendRows } from './legend-rows.ts'
import { outlinePath } from './path-data.ts'
import { roundLength } from './round-length.ts'
import { scaleBar } from './scale-bar.ts'
import type { SurveyPolarOptions } from './survey-polar-options.ts'
import { closingMark, turnMark, turnMarkCount } from './turn-mark.ts'

const barPx = 26

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
  const { topPx, pxPerUm, middlePx } = plot
  const { texts, sweptDiameterMm } = options
  const rows = [...readingRows(options), ...lineRows(options)]
  const barUm = roundLength((middlePx * 0.64) / pxPerUm)
  const times =
    sweptDiameterMm === null ? '' : texts.timesLarger((pxPerUm * 500 * sweptDiameterMm) / middlePx)
  const text = [texts.scale(barUm), times].filter((one) => one !== '').join(', ')
  return {
    shapes: [
      ...scaleBar({ x: 8, y: topPx + 12, lengthPx: barUm * pxPerUm, text }),
      ...legendRows(rows, topPx + barPx),
    ],
    heightPx: barPx + legendRowPx * rows.length + 8,
  }
}

function readingRows({ texts, turns, closing }: SurveyPolarOptions): readonly LegendRow[] {
  const shown = turns.slice(0, turnMarkCount)
  return [
    ...shown.map(
      (_, index): LegendRow => ({
        text: texts.turn(index),
        sign: (x, y) => [turnMark(index, { x, y })],
      }),
    ),
    ...(closing.length === 0
      ? []
      : [{ text: texts.closing, sign: (x: number, y: number) => [closingMark({ x, y })] }]),
  ]
}

function lineRows(options: SurveyPolarOptions): readonly LegendRow[] {
  const { texts, fit, minimumZone, limitUm } = options
  const all: readonly (LegendRow | null)[] = [
    { text: texts.joined, sign: legendLine({ stroke: 'soft', strokePx: 1.1 }) },
    fit && { text: texts.fitted, sign: legendLine({ stroke: 'accent', strokePx: 2.4 }) },
    fit === null || fit.directionDeg === null ? null : { text: texts.highest, sign: pointer },
    minimumZone && {
      text: texts.minimumZone,
      sign: legendLine({ stroke: 'ink', strokePx: 1.3, dash: 'dotted' }),
    },
    limitUm === null
      ? null
      : {
          text: texts.limit,
          sign: legendLine({ stroke: 'ink', strokePx: 1.4, dash: 'dashed' }),
        },
  ]
  return all.filter((one) => one !== null)
}

function pointer(x: number, y: number): readonly Shape[] {
  const corners = [
    { x, y: y + 6 },
    { x: x - 5, y: y - 5 },
    { x: x + 5, y: y - 5 },
  ]
  return [{ kind: 'path', d: outlinePath(corners, true), fill: 'accent' }]
}
