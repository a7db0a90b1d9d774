import type { Fact } from '../document.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper, Structure } from '../paper/paper.ts'
import { textStyles } from '../paper/text-styles.ts'
import { lazily, rule, setLines, started } from './text-pieces.ts'

/** Where pairs of label and value stand. */
export type FactsPlace = {
  readonly x: number
  readonly widthPt: number
  readonly labelWidthPt: number
  readonly gapPt: number
}

const wholeWidth: FactsPlace = {
  x: pageSize.leftPt,
  widthPt: pageSize.bodyWidthPt,
  labelWidthPt: 92,
  gapPt: 18,
}

/** Pairs of label and value in two columns, read row by row. */
export function factsPieces(
  paper: Paper,
  facts: readonly Fact[],
  place: FactsPlace = wholeWidth,
): readonly Piece[] {
  const table = lazily(() => started(paper, paper.root, 'Table'))
  const columnPt = (place.widthPt - place.gapPt) / 2
  const cells = facts.map((fact) => factCell(paper, fact, columnPt, place.labelWidthPt))
  const rowCount = Math.ceil(cells.length / 2)
  return Array.from({ length: rowCount }, (_, row) => {
    const pair = cells.slice(2 * row, 2 * row + 2)
    return {
      heightPt: Math.max(...pair.map((cell) => cell.heightPt)) + 5,
      beforePt: row === 0 ? 2 : 0,
      draw: (y: number, isTop?: boolean) => {
        if (row > 0 && isTop !== true) paper.ornament(() => rowRule(paper, place, y))
        const line = started(paper, table(), 'TR')
        pair.forEach((cell, index) => {
          cell.draw(line, { x: place.x + index * (columnPt + place.gapPt), y: y + 2.5 })
        })
      },
    }
  })
}

function rowRule(paper: Paper, { x, widthPt }: FactsPlace, y: number): void {
  rule(paper, { x, y, toX: x + widthPt }, 'faint', 0.5)
}

function factCell(paper: Paper, fact: Fact, columnPt: number, labelPt: number) {
  const labels = paper.wrap(fact.label, 'label', labelPt - 8)
  const values = paper.wrap(fact.value, 'plain', columnPt - labelPt)
  const heightPt = Math.max(
    labels.length * textStyles.label.leadingPt,
    values.length * textStyles.plain.leadingPt,
  )
  return {
    heightPt,
    draw: (line: Structure, at: { readonly x: number; readonly y: number }) => {
      const label = () => setLines(paper, labels, 'label', at)
      paper.tag(line, 'TH', label, { scope: 'Row' })
      const value = () => setLines(paper, values, 'plain', { x: at.x + labelPt, y: at.y })
      paper.tag(line, 'TD', value)
    },
  }
}
