import { alignmentEndView, endViewScale } from './alignment-end-view.ts'
import type { AlignmentPictureOptions } from './alignment-picture-options.ts'
import { alignmentSideView, sideViewHeightPx, sideViewScale } from './alignment-side-view.ts'
import type { Drawing, Shape } from './drawing.ts'
import { type LegendRow, legendArea, legendLine, legendRowPx, legendRows } from './legend-rows.ts'
import { roundLength } from './round-length.ts'
import { scaleBar } from './scale-bar.ts'

const titlePx = 24
const barPx = 28

/**
 * Shaft, sleeve, register and faces of a machine in one picture, each out of place as far as it
 * is, enlarged by a scale that is printed: from the end with the move that brings the register
 * onto the axis, and from the side with the place of the shim that squares the face.
 *
 * @param options see AlignmentPictureOptions
 * @returns the drawing; the same every time
 * @throws RangeError for a width out of range
 * Validity: sizes of shaft and chamber are not those of the machine; only offsets, heights and
 *   directions are drawn to scale.
 */
export function alignmentPicture(options: AlignmentPictureOptions): Drawing {
  const { widthPx, texts, shaft, sleeve, register, chamberFace, seatFace } = options
  if (!(widthPx >= 320 && widthPx <= 600)) {
    throw new RangeError(`alignmentPicture requires widthPx from 320 to 600, got ${widthPx}`)
  }
  const hasEnd = shaft !== null || sleeve !== null || register !== null
  const hasSide = chamberFace !== null || seatFace !== null
  const endHeightPx = hasEnd ? titlePx + widthPx + barPx : 0
  const sideTopPx = endHeightPx + (hasSide && hasEnd ? 14 : 0)
  const legendTopPx = sideTopPx + (hasSide ? titlePx + sideViewHeightPx + barPx : 0)
  const rows = rowsOf(options)
  const maximumPx = widthPx * 0.28
  const bar = (pxPerUm: number, y: number): readonly Shape[] => {
    const um = roundLength(maximumPx / pxPerUm)
    return scaleBar({ x: 8, y, lengthPx: um * pxPerUm, text: texts.scale(um) })
  }
  const end = hasEnd
    ? [
        title(texts.endView, 16),
        ...alignmentEndView(options, titlePx),
        ...bar(endViewScale(options), titlePx + widthPx + 14),
      ]
    : []
  const side = hasSide
    ? [
        title(texts.sideView, sideTopPx + 16),
        ...alignmentSideView(options, sideTopPx + titlePx),
        ...bar(sideViewScale(options), sideTopPx + titlePx + sideViewHeightPx + 14),
      ]
    : []
  return {
    widthPx,
    heightPx: legendTopPx + legendRowPx * rows.length + 8,
    shapes: [...end, ...side, ...legendRows(rows, legendTopPx)],
  }
}

function title(text: string, y: number): Shape {
  return { kind: 'text', x: 8, y, text, sizePx: 14, anchor: 'start', tone: 'ink', isStrong: true }
}

function rowsOf(options: AlignmentPictureOptions): readonly LegendRow[] {
  const { texts, shaft, sleeve, register, chamberFace, seatFace } = options
  const heavy = legendLine({ stroke: 'accent', strokePx: 4 })
  const dashed = legendLine({ stroke: 'accent', strokePx: 1.4, dash: 'dashed' })
  const dotted = legendLine({ stroke: 'ink', strokePx: 1.6, dash: 'dotted' })
  const all: readonly (LegendRow | null)[] = [
    { text: texts.shaft, sign: legendArea({ fill: 'faint', stroke: 'ink' }) },
    shaft && { text: texts.runOutCircle, sign: dotted },
    sleeve && { text: texts.sleeve, sign: legendArea({ fill: 'paper', stroke: 'ink' }) },
    register && { text: texts.register, sign: legendArea({ fill: 'half', stroke: 'ink' }) },
    register && { text: texts.move, sign: heavy },
    register && { text: texts.afterMove, sign: dashed },
    seatFace && { text: texts.seatFace, sign: legendArea({ fill: 'paper', stroke: 'ink' }) },
    chamberFace && { text: texts.chamberFace, sign: legendArea({ fill: 'half', stroke: 'ink' }) },
    chamberFace && { text: texts.square, sign: dashed },
    chamberFace && { text: texts.shim, sign: legendArea({ fill: 'accent', stroke: 'accent' }) },
  ]
  return all.filter((one) => one !== null)
}
