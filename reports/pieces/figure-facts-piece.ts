import type { FigureFactsBlock } from '../document.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper, Structure } from '../paper/paper.ts'
import { textStyles } from '../paper/text-styles.ts'
import { drawPicture } from './cell.ts'
import { rule, setLines, started } from './text-pieces.ts'

const gapPt = 16
const captionGapPt = 3
const pictureShare = 0.4
const labelPt = 104
const rowGapPt = 3.5

/** A picture at the left, what it says at the right, all on one page. */
export function figureFactsPiece(paper: Paper, block: FigureFactsBlock): Piece {
  const { picture, caption } = block.figure
  const picturePt = pageSize.bodyWidthPt * pictureShare
  const scale = picturePt / picture.drawing.widthPx
  const lines = caption === '' ? [] : paper.wrap(caption, 'strong', picturePt)
  const captionPt =
    lines.length === 0 ? 0 : lines.length * textStyles.strong.leadingPt + captionGapPt
  const x = pageSize.leftPt + picturePt + gapPt
  const rows = block.facts.map(({ label, value }) => {
    const labels = paper.wrap(label, 'label', labelPt - 8)
    const values = paper.wrap(value, 'plain', pageSize.rightPt - x - labelPt)
    const heightPt = Math.max(
      labels.length * textStyles.label.leadingPt,
      values.length * textStyles.plain.leadingPt,
    )
    return { labels, values, heightPt: heightPt + rowGapPt }
  })
  const factsPt = rows.reduce((sum, row) => sum + row.heightPt, captionPt)
  return {
    heightPt: Math.max(captionPt + picture.drawing.heightPx * scale, factsPt) + 4,
    beforePt: 6,
    draw: (y) => {
      const at = { x: pageSize.leftPt, y }
      if (lines.length > 0) {
        paper.tag(paper.root, 'P', () => setLines(paper, lines, 'strong', at))
      }
      drawPicture(paper, paper.root, picture, { x: at.x, y: y + captionPt, scale })
      const table = started(paper, paper.root, 'Table')
      let top = y + captionPt
      for (const [index, row] of rows.entries()) {
        if (index > 0) {
          const from = top
          paper.ornament(() => rule(paper, { x, y: from, toX: pageSize.rightPt }, 'faint', 0.5))
        }
        drawRow(paper, table, row, { x, y: top + rowGapPt / 2 })
        top += row.heightPt
      }
    },
  }
}

function drawRow(
  paper: Paper,
  table: Structure,
  row: { readonly labels: readonly string[]; readonly values: readonly string[] },
  at: { readonly x: number; readonly y: number },
): void {
  const line = started(paper, table, 'TR')
  const label = () => setLines(paper, row.labels, 'label', at)
  paper.tag(line, 'TH', label, { scope: 'Row' })
  const place = { x: at.x + labelPt, y: at.y }
  paper.tag(line, 'TD', () => setLines(paper, row.values, 'plain', place))
}
