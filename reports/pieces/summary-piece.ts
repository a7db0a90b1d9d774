import { verdictShape } from '../../src/plots/verdict-shape.ts'
import type { SummaryBlock } from '../document.ts'
import { drawShapes } from '../paper/draw-shapes.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper } from '../paper/paper.ts'
import { qrPath } from '../paper/qr-path.ts'
import { textStyles } from '../paper/text-styles.ts'
import { factsPieces } from './facts-pieces.ts'
import { rule, setLines } from './text-pieces.ts'

const padPt = 12
const codePt = 104
const markPt = 26
const leftX = pageSize.leftPt + padPt
const codeX = pageSize.rightPt - padPt - codePt
const textWidthPt = codeX - leftX - 22

/** The panel that answers at a glance: verdict, what it is about, and how to check it. */
export function summaryPiece(paper: Paper, block: SummaryBlock): Piece {
  const words = paper.wrap(block.word, 'verdict', textWidthPt - markPt - 10)
  const sentence = paper.wrap(block.sentence, 'plain', textWidthPt)
  const facts = factsPieces(paper, block.facts, {
    x: leftX,
    widthPt: textWidthPt,
    labelWidthPt: 62,
    gapPt: 14,
  })
  const check = paper.wrap(block.code.sentence, 'small', textWidthPt)
  const wordHeight = Math.max(words.length * textStyles.verdict.leadingPt, markPt)
  const sentenceTop = wordHeight + 5
  const factsTop = sentenceTop + sentence.length * textStyles.plain.leadingPt + 8
  const factsHeight = facts.reduce((sum, one) => sum + one.heightPt, 0)
  const checkTop = factsTop + factsHeight + 6
  const innerHeight = Math.max(checkTop + check.length * textStyles.small.leadingPt, codePt)
  return {
    heightPt: innerHeight + 2 * padPt,
    beforePt: 0,
    draw: (top) => {
      paper.ornament(() => panel(paper, top, innerHeight + 2 * padPt))
      const y = top + padPt
      paper.tag(paper.root, 'P', () => {
        const shape = verdictShape(block.verdict, 24)
        drawShapes(paper, shape, { x: leftX, y, scale: markPt / 24 })
        const drop = Math.max(0, (markPt - textStyles.verdict.leadingPt) / 2)
        setLines(paper, words, 'verdict', { x: leftX + markPt + 10, y: y + drop })
      })
      paper.tag(paper.root, 'P', () =>
        setLines(paper, sentence, 'plain', { x: leftX, y: y + sentenceTop }),
      )
      let factY = y + factsTop
      for (const fact of facts) {
        fact.draw(factY)
        factY += fact.heightPt
      }
      drawCode(paper, block, y)
      paper.tag(paper.root, 'P', () =>
        setLines(paper, check, 'small', { x: leftX, y: y + checkTop }),
      )
    },
  }
}

function panel(paper: Paper, top: number, heightPt: number): void {
  const { leftPt, rightPt, bodyWidthPt } = pageSize
  paper.pdf.rect(leftPt, top, bodyWidthPt, heightPt).fill(paper.colour('bright'))
  rule(paper, { x: leftPt, y: top, toX: rightPt }, 'accent', 1.6)
}

/** Black on white with its quiet zone: tinted ground makes codes hard to read. */
function drawCode(paper: Paper, { code }: SummaryBlock, y: number): void {
  const { d, sizeModules } = qrPath(code.url)
  const bbox: [number, number, number, number] = [codeX, y, codeX + codePt, y + codePt]
  const draw = () => {
    const { pdf } = paper
    pdf.rect(codeX, y, codePt, codePt).fill(paper.colour('paper'))
    pdf
      .save()
      .translate(codeX, y)
      .scale(codePt / sizeModules)
    pdf.path(d).fill('#000000')
    pdf.restore()
  }
  paper.tag(paper.root, 'Figure', draw, { alt: paper.printable(code.alternative), bbox })
}
