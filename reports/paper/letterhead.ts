import type { PaperDocument } from '../document.ts'
import { drawPicture } from '../pieces/cell.ts'
import { rule, setLines } from '../pieces/text-pieces.ts'
import { pageSize } from './page-size.ts'
import type { Paper } from './paper.ts'
import { textStyles } from './text-styles.ts'

const markPt = 36
const identityWidthPt = 190

/**
 * The head of the first page: who issues, which document, and its title.
 * @returns where the text goes on, points from the top
 */
export function drawLetterhead(paper: Paper, { letterhead }: PaperDocument): number {
  const { leftPt, rightPt, bodyWidthPt, letterheadTopPt: top } = pageSize
  const { mark } = letterhead
  const textX = leftPt + markPt + 12
  const nameWidth = rightPt - identityWidthPt - 16 - textX
  const name = paper.wrap(letterhead.name, 'workshop', nameWidth)
  const lines = letterhead.lines.flatMap((line) => paper.wrap(line, 'small', nameWidth))
  const scale = markPt / mark.drawing.widthPx
  drawPicture(paper, paper.root, mark, { x: leftPt, y: top, scale })
  let y = top - 1
  paper.tag(paper.root, 'P', () => {
    y += setLines(paper, name, 'workshop', { x: textX, y })
    y += setLines(paper, lines, 'small', { x: textX, y })
  })
  const identity = letterhead.identity.flatMap(({ text, style = 'plain' }) =>
    paper.wrap(text, style, identityWidthPt).map((line) => ({ line, style })),
  )
  let identityY = top - 1
  paper.tag(paper.root, 'P', () => {
    for (const { line, style } of identity) {
      paper.set(line, style, { x: rightPt, y: identityY, anchor: 'end' })
      identityY += textStyles[style].leadingPt
    }
  })
  const below = Math.max(y, top + markPt, identityY) + 7
  paper.ornament(() => rule(paper, { x: leftPt, y: below, toX: rightPt }, 'faint', 0.8))
  const title = paper.wrap(letterhead.title, 'title', bodyWidthPt)
  const subtitle = paper.wrap(letterhead.subtitle, 'subtitle', bodyWidthPt)
  const titleTop = below + 8
  const subtitleTop = titleTop + title.length * textStyles.title.leadingPt + 1
  paper.tag(paper.root, 'H1', () => setLines(paper, title, 'title', { x: leftPt, y: titleTop }))
  paper.tag(paper.root, 'P', () =>
    setLines(paper, subtitle, 'subtitle', { x: leftPt, y: subtitleTop }),
  )
  return subtitleTop + subtitle.length * textStyles.subtitle.leadingPt + 11
}
