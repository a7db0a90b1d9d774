import type { TableBlock } from '../document.ts'
import type { Piece } from '../paper/flow.ts'
import { pageSize } from '../paper/page-size.ts'
import type { Paper, Structure } from '../paper/paper.ts'
import { textStyles } from '../paper/text-styles.ts'
import { type MeasuredCell, measuredCell } from './cell.ts'
import { lazily, rule, setLines, started } from './text-pieces.ts'

const gapPt = 12
const padPt = 4

/** A table: its head, repeated on each page that it reaches, and one piece a row. */
export function tablePieces(paper: Paper, block: TableBlock): readonly Piece[] {
  const table = lazily(() => started(paper, paper.root, 'Table'))
  const columns = columnPlaces(block)
  const heads = columns.map(({ title, widthPt }) => headCell(paper, title, widthPt))
  const head: Piece = {
    heightPt: tallest(heads) + 5,
    beforePt: 6,
    isKeptWithNext: true,
    draw: (y) => {
      drawRow(started(paper, table(), 'TR'), 'TH', heads, columns, y)
      const below = y + tallest(heads) + 3.5
      paper.ornament(() =>
        rule(paper, { x: pageSize.leftPt, y: below, toX: pageSize.rightPt }, 'ink', 0.9),
      )
    },
  }
  return [head, ...block.rows.map((row) => rowPiece(paper, row, columns, table, head))]
}

type ColumnPlace = { readonly title: string; readonly x: number; readonly widthPt: number }

function columnPlaces({ columns }: TableBlock): readonly ColumnPlace[] {
  const shares = columns.reduce((sum, one) => sum + one.share, 0)
  const freePt = pageSize.bodyWidthPt - gapPt * (columns.length - 1)
  let x = pageSize.leftPt
  return columns.map(({ title, share }) => {
    const place = { title, x, widthPt: (freePt * share) / shares }
    x += place.widthPt + gapPt
    return place
  })
}

function headCell(paper: Paper, title: string, widthPt: number): MeasuredCell {
  const lines = paper.wrap(title, 'tableHead', widthPt)
  return {
    heightPt: lines.length * textStyles.tableHead.leadingPt,
    draw: (row, type, at) =>
      paper.tag(row, type, () => setLines(paper, lines, 'tableHead', at), { scope: 'Column' }),
  }
}

function rowPiece(
  paper: Paper,
  row: TableBlock['rows'][number],
  columns: readonly ColumnPlace[],
  table: () => Structure,
  head: Piece,
): Piece {
  const cells = row.cells.map((cell, index) =>
    measuredCell(paper, cell, columns[index]?.widthPt ?? 0),
  )
  const note = row.note ?? ''
  const noteLines = note === '' ? [] : paper.wrap(note, 'small', pageSize.bodyWidthPt)
  const noteTop = padPt + tallest(cells) + (note === '' ? 0 : 2)
  const heightPt = noteTop + noteLines.length * textStyles.small.leadingPt + padPt
  return {
    heightPt,
    beforePt: 0,
    head,
    draw: (y) => {
      drawRow(started(paper, table(), 'TR'), 'TD', cells, columns, y + padPt)
      if (noteLines.length > 0) {
        const at = { x: pageSize.leftPt, y: y + noteTop }
        const line = started(paper, table(), 'TR')
        paper.tag(line, 'TD', () => setLines(paper, noteLines, 'small', at))
      }
      const below = y + heightPt
      paper.ornament(() =>
        rule(paper, { x: pageSize.leftPt, y: below, toX: pageSize.rightPt }, 'faint', 0.6),
      )
    },
  }
}

function drawRow(
  row: Structure,
  type: 'TH' | 'TD',
  cells: readonly MeasuredCell[],
  columns: readonly ColumnPlace[],
  y: number,
): void {
  cells.forEach((cell, index) => {
    cell.draw(row, type, { x: columns[index]?.x ?? 0, y })
  })
}

function tallest(cells: readonly MeasuredCell[]): number {
  return Math.max(...cells.map((cell) => cell.heightPt))
}
