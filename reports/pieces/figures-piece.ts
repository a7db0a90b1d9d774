import type { FiguresBlock, Picture } from '../document.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper } from '../paper/paper.ts'
import { textStyles } from '../paper/text-styles.ts'
import { drawPicture } from './cell.ts'
import { setLines } from './text-pieces.ts'

const gapPt = 14
/** Between the smaller ones: two figures with what belongs to them have to go on a page. */
const rowGapPt = 8
const captionGapPt = 3
const leftShare = 0.46

type Placed = {
  readonly picture: Picture
  readonly lines: readonly string[]
  readonly heightPt: number
  readonly scale: number
}

/** A large picture at the left, smaller ones under each other at the right; all on one page. */
export function figuresPiece(paper: Paper, block: FiguresBlock): Piece {
  const leftPt = pageSize.bodyWidthPt * leftShare
  const rightPt = pageSize.bodyWidthPt - leftPt - gapPt
  const left = placed(paper, block.large, leftPt)
  const right = block.small.map((one) => placed(paper, one, rightPt))
  const rightHeight = right.reduce((sum, one) => sum + one.heightPt + rowGapPt, -rowGapPt)
  return {
    heightPt: Math.max(left.heightPt, rightHeight) + 4,
    beforePt: 6,
    isKeptWithNext: true,
    draw: (y) => {
      drawPlaced(paper, left, { x: pageSize.leftPt, y })
      let top = y
      for (const one of right) {
        drawPlaced(paper, one, { x: pageSize.leftPt + leftPt + gapPt, y: top })
        top += one.heightPt + rowGapPt
      }
    },
  }
}

function placed(
  paper: Paper,
  { picture, caption }: FiguresBlock['large'],
  widthPt: number,
): Placed {
  const scale = widthPt / picture.drawing.widthPx
  const lines = paper.wrap(caption, 'strong', widthPt)
  const captionPt = lines.length * textStyles.strong.leadingPt + captionGapPt
  return { picture, lines, heightPt: captionPt + picture.drawing.heightPx * scale, scale }
}

function drawPlaced(
  paper: Paper,
  { picture, lines, scale }: Placed,
  at: { readonly x: number; readonly y: number },
): void {
  paper.tag(paper.root, 'P', () => setLines(paper, lines, 'strong', at))
  const top = at.y + lines.length * textStyles.strong.leadingPt + captionGapPt
  drawPicture(paper, paper.root, picture, { x: at.x, y: top, scale })
}
