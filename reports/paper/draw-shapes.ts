import type { Dash, Drawing, PathShape, Shape } from '../../src/plots/drawing.ts'
import type { Paper } from './paper.ts'

/** Lengths of dash and gap as multiples of the line's width. */
const dashes: Readonly<Record<Exclude<Dash, 'solid'>, readonly [number, number]>> = {
  dashed: [2.2, 1.6],
  dotted: [1, 1.4],
}

/**
 * Draws one of our drawings on paper: the same shapes that the page shows.
 * @param at upper left corner and points per pixel of the drawing
 */
export function drawShapes(
  paper: Paper,
  drawing: Drawing,
  at: { readonly x: number; readonly y: number; readonly scale: number },
): void {
  const { pdf } = paper
  pdf.save().translate(at.x, at.y).scale(at.scale)
  for (const shape of drawing.shapes) drawShape(paper, shape)
  pdf.restore()
}

function drawShape(paper: Paper, shape: Shape): void {
  const { pdf, colour } = paper
  if (shape.kind === 'path') {
    paintPath(paper, shape)
  } else if (shape.kind === 'line') {
    pdf.moveTo(shape.x1, shape.y1).lineTo(shape.x2, shape.y2)
    setPen(paper, shape)
    pdf.stroke(colour(shape.stroke ?? 'ink')).undash()
  } else {
    const text = paper.printable(shape.text)
    pdf.font(shape.isStrong ? 'strong' : 'regular').fontSize(shape.sizePx)
    const shift = { start: 0, middle: 0.5, end: 1 }[shape.anchor] * pdf.widthOfString(text)
    pdf
      .fillColor(colour(shape.tone))
      .text(text, shape.x - shift, shape.y, { lineBreak: false, baseline: 'alphabetic' })
  }
}

function paintPath(paper: Paper, shape: PathShape): void {
  const { pdf, colour } = paper
  if (shape.fill !== undefined) pdf.path(shape.d).fill(colour(shape.fill), 'even-odd')
  if (shape.stroke === undefined) return
  setPen(paper, shape)
  pdf.path(shape.d).stroke(colour(shape.stroke)).undash()
}

function setPen({ pdf }: Paper, shape: { readonly strokePx?: number; readonly dash?: Dash }): void {
  const width = shape.strokePx ?? 1
  pdf.lineWidth(width)
  if (shape.dash === undefined || shape.dash === 'solid') return
  const [length, space] = dashes[shape.dash]
  pdf.dash(length * width, { space: space * width })
}
