import type { Block, PaperDocument } from './document.ts'
import { flow, type Piece } from './paper/flow.ts'
import { drawLetterhead } from './paper/letterhead.ts'
import { drawFurniture } from './paper/page-furniture.ts'
import { openPaper, type Paper } from './paper/paper.ts'
import { factsPieces } from './pieces/facts-pieces.ts'
import { figureFactsPiece } from './pieces/figure-facts-piece.ts'
import { figuresPiece } from './pieces/figures-piece.ts'
import { signaturesPiece } from './pieces/signatures-piece.ts'
import { summaryPiece } from './pieces/summary-piece.ts'
import { tablePieces } from './pieces/table-pieces.ts'
import {
  endPiece,
  headingPiece,
  listPieces,
  paragraphPieces,
  subheadingPiece,
} from './pieces/text-pieces.ts'

/**
 * Draws a document as a tagged PDF with embedded fonts. It decides nothing but where things go;
 * the same document gives the same bytes.
 */
export async function drawDocument(document: PaperDocument): Promise<Buffer> {
  const paper = openPaper(document)
  paper.pdf.addPage()
  const top = drawLetterhead(paper, document)
  const pieces = document.blocks.flatMap((block) => piecesOf(paper, block))
  flow(paper, pieces, top)
  drawFurniture(paper, document)
  return paper.finish()
}

function piecesOf(paper: Paper, block: Block): readonly Piece[] {
  switch (block.kind) {
    case 'heading':
      return [headingPiece(paper, block.text)]
    case 'subheading':
      return [subheadingPiece(paper, block.text)]
    case 'paragraph':
      return paragraphPieces(paper, block.text, block.style ?? 'plain')
    case 'list':
      return listPieces(paper, block.items)
    case 'facts':
      return factsPieces(paper, block.facts)
    case 'table':
      return tablePieces(paper, block)
    case 'figures':
      return [figuresPiece(paper, block)]
    case 'figure-facts':
      return [figureFactsPiece(paper, block)]
    case 'summary':
      return [summaryPiece(paper, block)]
    case 'signatures':
      return [signaturesPiece(paper, block)]
    case 'end':
      return [endPiece(paper, block.text)]
  }
}
