import type { SignaturesBlock } from '../document.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper } from '../paper/paper.ts'
import { measuredCell } from './cell.ts'
import { rule, started } from './text-pieces.ts'

const gapPt = 18

/** Who answers for what, side by side. */
export function signaturesPiece(paper: Paper, block: SignaturesBlock): Piece {
  const count = block.people.length
  const widthPt = (pageSize.bodyWidthPt - gapPt * (count - 1)) / count
  const columns = block.people.map(({ heading, lines }) =>
    measuredCell(paper, { lines: [{ text: heading, style: 'small' }, ...lines] }, widthPt),
  )
  const heightPt = Math.max(...columns.map((one) => one.heightPt)) + 6
  return {
    heightPt,
    beforePt: 8,
    isKeptWithNext: true,
    draw: (y) => {
      const list = started(paper, paper.root, 'Sect')
      columns.forEach((column, index) => {
        const x = pageSize.leftPt + index * (widthPt + gapPt)
        paper.ornament(() => rule(paper, { x, y, toX: x + widthPt }, 'ink', 0.9))
        column.draw(list, 'Div', { x, y: y + 5 })
      })
    },
  }
}
