import type { ParagraphStyle } from '../document.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper, Structure } from '../paper/paper.ts'
import { type StyleName, textStyles } from '../paper/text-styles.ts'

/** Draws lines one under the other; gives the height used. */
export function setLines(
  paper: Paper,
  lines: readonly string[],
  style: StyleName,
  at: { readonly x: number; readonly y: number },
): number {
  const { leadingPt } = textStyles[style]
  lines.forEach((line, index) => {
    paper.set(line, style, { x: at.x, y: at.y + index * leadingPt })
  })
  return lines.length * leadingPt
}

/** A heading of the document, with a rule above it. */
export function headingPiece(paper: Paper, text: string): Piece {
  const { leftPt: x, rightPt, bodyWidthPt } = pageSize
  const lines = paper.wrap(text, 'heading', bodyWidthPt)
  const rulePt = 5
  return {
    heightPt: rulePt + lines.length * textStyles.heading.leadingPt + 3,
    beforePt: 13,
    isKeptWithNext: true,
    draw: (y, isTop) => {
      if (isTop !== true) paper.ornament(() => rule(paper, { x, y, toX: rightPt }, 'accent', 0.8))
      paper.tag(paper.root, 'H2', () => setLines(paper, lines, 'heading', { x, y: y + rulePt }))
    },
  }
}

export function subheadingPiece(paper: Paper, text: string): Piece {
  const lines = paper.wrap(text, 'subheading', pageSize.bodyWidthPt)
  return {
    heightPt: lines.length * textStyles.subheading.leadingPt + 2,
    beforePt: 9,
    isKeptWithNext: true,
    draw: (y) =>
      paper.tag(paper.root, 'H3', () =>
        setLines(paper, lines, 'subheading', { x: pageSize.leftPt, y }),
      ),
  }
}

/** A paragraph: one piece for each run of lines, so that a long one may cross pages. */
export function paragraphPieces(
  paper: Paper,
  text: string,
  style: ParagraphStyle,
): readonly Piece[] {
  const lines = paper.wrap(text, style, pageSize.bodyWidthPt)
  return runs(lines).map((run, index) => ({
    heightPt: run.length * textStyles[style].leadingPt,
    beforePt: index === 0 ? 4 : 0,
    draw: (y) =>
      paper.tag(paper.root, 'P', () => setLines(paper, run, style, { x: pageSize.leftPt, y })),
  }))
}

/** Items with a dash in front of each. */
export function listPieces(paper: Paper, items: readonly string[]): readonly Piece[] {
  const indentPt = 11
  const list = lazily(() => started(paper, paper.root, 'L'))
  return items.flatMap((item, place) => {
    const isKeptWithNext = place === 0 || place === items.length - 2
    const lines = paper.wrap(item, 'plain', pageSize.bodyWidthPt - indentPt)
    const entry = lazily(() => started(paper, list(), 'LI'))
    return runs(lines).map((run, index) => ({
      heightPt: run.length * textStyles.plain.leadingPt,
      beforePt: index === 0 ? 2.5 : 0,
      isKeptWithNext: isKeptWithNext && items.length > 1,
      draw: (y: number) => {
        const x = pageSize.leftPt
        if (index === 0) {
          paper.tag(entry(), 'Lbl', () => paper.set('–', 'plain', { x, y }))
        }
        paper.tag(entry(), 'LBody', () => setLines(paper, run, 'plain', { x: x + indentPt, y }))
      },
    }))
  })
}

/** The mark that nothing follows. */
export function endPiece(paper: Paper, text: string): Piece {
  const middle = (pageSize.leftPt + pageSize.rightPt) / 2
  return {
    heightPt: 16,
    beforePt: 14,
    draw: (y) => {
      const printable = paper.printable(text)
      const half = paper.widthPt(printable, 'strong') / 2 + 10
      const middleY = y + 8
      paper.ornament(() => {
        rule(paper, { x: pageSize.leftPt, y: middleY, toX: middle - half }, 'soft', 0.8)
        rule(paper, { x: middle + half, y: middleY, toX: pageSize.rightPt }, 'soft', 0.8)
      })
      paper.tag(paper.root, 'P', () => {
        paper.set(printable, 'strong', { x: middle, y: y + 2, anchor: 'middle' })
      })
    },
  }
}

/** A level hairline. */
export function rule(
  paper: Paper,
  at: { readonly x: number; readonly y: number; readonly toX: number },
  tone: 'accent' | 'soft' | 'faint' | 'ink' = 'faint',
  weightPt = 0.6,
): void {
  paper.pdf.lineWidth(weightPt).moveTo(at.x, at.y).lineTo(at.toX, at.y).stroke(paper.colour(tone))
}

/** An element of the structure tree that more pieces add to; the document's end ends it. */
export function started(paper: Paper, parent: Structure, type: string): Structure {
  const element = paper.pdf.struct(type)
  parent.add(element)
  return element
}

/** Made at its first use, so that the structure tree has the order of drawing. */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** Lines in runs of at most ten, never one alone at the end. */
function runs(lines: readonly string[]): readonly (readonly string[])[] {
  if (lines.length <= 12) return [lines]
  return [lines.slice(0, 10), ...runs(lines.slice(10))]
}
