import { pageSize } from './page-size.ts'
import type { Paper } from './paper.ts'

/** A part of a document that stays on one page. */
export type Piece = {
  readonly heightPt: number
  /** Space above it, left out at the top of a page. */
  readonly beforePt: number
  /** A heading must not stand alone at the foot of a page. */
  readonly isKeptWithNext?: boolean
  /** Drawn again where this piece starts a page: the head of a table. */
  readonly head?: Piece
  /** `isTop`: nothing stands above it on this page. */
  readonly draw: (yPt: number, isTop?: boolean) => void
}

/**
 * Sets pieces one under the other and starts a new page where the next ones, with all that they
 * are kept with, do not fit.
 * @param firstTopPt where the first piece goes on the page that is open
 */
export function flow(paper: Paper, pieces: readonly Piece[], firstTopPt: number): void {
  let y = firstTopPt
  let isTop = true
  pieces.forEach((piece, index) => {
    if (!isTop && y + keptHeightPt(pieces, index) > pageSize.bottomPt) {
      paper.pdf.addPage()
      y = pageSize.laterTopPt
      isTop = true
      if (piece.head !== undefined) {
        piece.head.draw(y)
        y += piece.head.heightPt
      }
    } else if (!isTop) {
      y += piece.beforePt
    }
    y += drawWithin(paper, piece, y, isTop)
    isTop = false
  })
}

/**
 * Draws a piece; one that no page can hold is made smaller rather than cut off. It takes a text of
 * hundreds of characters that the font lacks, each then named, to come to that.
 * @returns the height used
 */
function drawWithin(paper: Paper, piece: Piece, y: number, isTop: boolean): number {
  const freePt = pageSize.bottomPt - y
  const scale = Math.min(1, freePt / piece.heightPt)
  if (scale === 1) {
    piece.draw(y, isTop)
    return piece.heightPt
  }
  const { leftPt } = pageSize
  paper.pdf.save().translate(leftPt, y).scale(scale).translate(-leftPt, -y)
  piece.draw(y, isTop)
  paper.pdf.restore()
  return freePt
}

/** Height of a piece with all that must stand on the same page, spaces included. */
function keptHeightPt(pieces: readonly Piece[], from: number): number {
  let height = 0
  for (const piece of pieces.slice(from)) {
    height += piece.beforePt + piece.heightPt
    if (piece.isKeptWithNext !== true) break
  }
  return height
}
