import type { PaperDocument } from '../document.ts'
import { rule } from '../pieces/text-pieces.ts'
import { pageSize } from './page-size.ts'
import type { Paper } from './paper.ts'

/** What repeats on every page, once their number is known: number, page x of y, marking. */
export function drawFurniture(paper: Paper, document: PaperDocument): void {
  const { start, count } = paper.pdf.bufferedPageRange()
  for (let index = 0; index < count; index += 1) {
    paper.pdf.switchToPage(start + index)
    paper.ornament(() => {
      if (index > 0) drawRunningHead(paper, document.runningHead)
      drawFooter(paper, document.footer, { page: index + 1, pages: count })
      if (document.marking !== null) drawMarking(paper, document.marking)
    }, 'Pagination')
  }
}

function drawRunningHead(paper: Paper, text: string): void {
  const { leftPt: x, rightPt, bodyWidthPt, runningHeadTopPt: y } = pageSize
  paper.set(shortened(paper, text, bodyWidthPt), 'furniture', { x, y })
  rule(paper, { x, y: y + 15, toX: rightPt })
}

function drawFooter(
  paper: Paper,
  footer: PaperDocument['footer'],
  at: { readonly page: number; readonly pages: number },
): void {
  const { leftPt: x, rightPt, footerRulePt, footerTopPt: y } = pageSize
  const right = paper.printable(
    footer.right.replace('{page}', String(at.page)).replace('{pages}', String(at.pages)),
  )
  const room = rightPt - x - paper.widthPt(right, 'furniture') - 16
  rule(paper, { x, y: footerRulePt, toX: rightPt })
  paper.set(shortened(paper, footer.left, room), 'furniture', { x, y })
  paper.set(right, 'furniture', { x: rightPt, y, anchor: 'end' })
}

/** What repeats has one line: a name that is too long for it ends in an ellipsis. */
function shortened(paper: Paper, text: string, widthPt: number): string {
  const [line = '', more] = paper.wrap(text, 'furniture', widthPt - 8)
  return more === undefined ? line : `${line}…`
}

/** A hatched strip at the head and at the foot, with the words on a clear ground. */
function drawMarking(paper: Paper, text: string): void {
  const { marking } = pageSize
  for (const top of [marking.topPt, marking.bottomTopPt]) drawStrip(paper, text, top)
}

function drawStrip(paper: Paper, text: string, top: number): void {
  const { leftPt: x, widthPt, heightPt } = pageSize.marking
  const { pdf } = paper
  const words = paper.printable(text)
  const plateWidth = paper.widthPt(words, 'marking') + 24
  const middle = x + widthPt / 2
  pdf.save().rect(x, top, widthPt, heightPt).clip()
  pdf.lineWidth(2.4)
  for (let start = x - heightPt; start < x + widthPt; start += 8) {
    pdf.moveTo(start, top + heightPt).lineTo(start + heightPt, top)
  }
  pdf.stroke(paper.colour('half')).restore()
  pdf.lineWidth(0.8).rect(x, top, widthPt, heightPt).stroke(paper.colour('ink'))
  pdf.rect(middle - plateWidth / 2, top, plateWidth, heightPt)
  pdf.fillAndStroke(paper.colour('paper'), paper.colour('ink'))
  paper.set(words, 'marking', { x: middle, y: top + 3, anchor: 'middle' })
}
