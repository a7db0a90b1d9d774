import { verdictShape } from '../../src/plots/verdict-shape.ts'
import type { Cell, Line, Picture } from '../document.ts'
import { drawShapes } from '../paper/draw-shapes.ts'
import type { Paper, Structure } from '../paper/paper.ts'
import { textStyles } from '../paper/text-styles.ts'
import { started } from './text-pieces.ts'

/** A cell measured for its width, ready to be drawn anywhere. */
export type MeasuredCell = {
  readonly heightPt: number
  readonly draw: (parent: Structure, type: 'TH' | 'TD' | 'Div', at: CellPlace) => void
}

type CellPlace = { readonly x: number; readonly y: number }

const pictureGapPt = 6
const markSizePt = 11
const markGapPt = 4
/** Pixels of our drawings become this many points on paper: their 13 px text becomes 8 pt. */
export const drawingScale = 0.62

/** Breaks the lines of a cell and finds its height. */
export function measuredCell(paper: Paper, cell: Cell, widthPt: number): MeasuredCell {
  const { picture, bar } = cell
  const pictureSize = sizeOf(picture)
  const barSize = sizeOf(bar)
  const textWidth = picture === undefined ? widthPt : widthPt - pictureSize.widthPt - pictureGapPt
  const lines = cell.lines.flatMap((line) => brokenLine(paper, line, textWidth))
  const textHeight = lines.reduce((sum, line) => sum + line.leadingPt, 0)
  const upperHeight = Math.max(textHeight, pictureSize.heightPt)
  const barTop = upperHeight + (bar === undefined ? 0 : 3)
  return {
    heightPt: barTop + barSize.heightPt,
    draw: (parent, type, at) => {
      const element = started(paper, parent, type)
      paper.tag(element, 'P', () => drawLines(paper, lines, at))
      drawPicture(paper, element, picture, {
        x: at.x + widthPt - pictureSize.widthPt,
        y: at.y,
      })
      drawPicture(paper, element, bar, { x: at.x, y: at.y + barTop })
    },
  }
}

type BrokenLine = {
  readonly text: string
  readonly style: 'plain' | 'strong' | 'small' | 'value' | 'tableHead'
  readonly leadingPt: number
  readonly indentPt: number
  readonly mark: Line['mark']
}

function brokenLine(paper: Paper, line: Line, widthPt: number): readonly BrokenLine[] {
  const style = line.style ?? 'plain'
  const { leadingPt } = textStyles[style]
  const indentPt = line.mark === undefined ? 0 : markSizePt + markGapPt
  return paper.wrap(line.text, style, widthPt - indentPt).map((text, index) => ({
    text,
    style,
    leadingPt:
      line.mark === undefined || index > 0 ? leadingPt : Math.max(leadingPt, markSizePt + 3),
    indentPt,
    mark: index === 0 ? line.mark : undefined,
  }))
}

function drawLines(paper: Paper, lines: readonly BrokenLine[], at: CellPlace): void {
  let y = at.y
  for (const line of lines) {
    if (line.mark !== undefined) {
      const shape = verdictShape(line.mark, 24)
      const top = y + (line.leadingPt - markSizePt) / 2
      drawShapes(paper, shape, { x: at.x, y: top, scale: markSizePt / 24 })
    }
    const drop = (line.leadingPt - textStyles[line.style].leadingPt) / 2
    paper.set(line.text, line.style, { x: at.x + line.indentPt, y: y + drop })
    y += line.leadingPt
  }
}

function sizeOf(picture: Picture | undefined) {
  const { widthPx = 0, heightPx = 0 } = picture?.drawing ?? {}
  return { widthPt: widthPx * drawingScale, heightPt: heightPx * drawingScale }
}

/** A drawing with its alternative text. */
export function drawPicture(
  paper: Paper,
  parent: Structure,
  picture: Picture | undefined,
  at: CellPlace & { readonly scale?: number },
): void {
  if (picture === undefined) return
  const { x, y, scale = drawingScale } = at
  const { drawing, alternative } = picture
  const bbox: [number, number, number, number] = [
    x,
    y,
    x + drawing.widthPx * scale,
    y + drawing.heightPx * scale,
  ]
  paper.tag(parent, 'Figure', () => drawShapes(paper, drawing, { x, y, scale }), {
    alt: paper.printable(alternative),
    bbox,
  })
}
