import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type { CertifiedLapping } from '../../src/domain/certified-lapping.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { lappingWords } from '../../views/words/en/lapping.ts'
import type { Block, Cell, TableBlock } from '../document.ts'
import { printMoment } from './print-when.ts'

const { certificate: words, lines, standing, ...common } = lappingWords

/** What was taken off each face and what is left of it; nothing where none was lapped. */
export function lappingBlocks({ lapping }: CertificateRecord): readonly Block[] {
  if (lapping.length === 0) return []
  return [
    { kind: 'subheading', text: words.heading },
    {
      kind: 'table',
      columns: words.columns.map((title, index) => ({
        title,
        share: [100, 120, 120, 120][index] ?? 1,
      })),
      rows: lapping.map(row),
    },
    { kind: 'paragraph', text: words.note },
  ]
}

function row(one: CertifiedLapping): TableBlock['rows'][number] {
  const cells = cellsOf(one)
  const corrected = one.corrections
    .map(({ byName, at, reason }) => lines.corrected(byName, printMoment(at), reason))
    .join(' ')
  return corrected === '' ? { cells } : { cells, note: corrected }
}

function cellsOf(one: CertifiedLapping): readonly Cell[] {
  return [
    { lines: [{ text: certificateWords.item.componentKinds[one.face], style: 'strong' }] },
    cell(
      lines.cycles(one.cycleCount, one.earlierCycleCount),
      one.isNewRing ? lines.newRing : lines.relaps(one.relapCount),
      one.removedUm === null ? lines.removedUnknown : lines.removed(one.removedUm.text),
    ),
    heightCell(one),
    minimumCell(one),
  ]
}

function heightCell({
  heightMm,
  heightBeforeMm,
  isHeightRead,
  unknownStockCount,
}: CertifiedLapping): Cell {
  if (heightMm === null) return cell(common.noHeight)
  const after = unknownStockCount > 0 ? common.atMost(heightMm.text) : heightMm.text
  const how = isHeightRead ? common.asRead : common.reckoned
  return cell(
    heightBeforeMm === null
      ? lines.height(after, how)
      : lines.heights(heightBeforeMm.text, after, how),
  )
}

function minimumCell({ minimumMm, marginMm, standing: stands }: CertifiedLapping): Cell {
  if (minimumMm === null) return cell(lines.noMinimum)
  const size = marginMm?.text.replace('−', '') ?? ''
  return {
    lines: [
      { text: standing[stands], style: 'strong' },
      ...(marginMm === null
        ? []
        : [{ text: stands === 'below' ? common.belowMinimum(size) : common.aboveMinimum(size) }]),
      { text: lines.minimum(minimumMm.text) },
    ],
  }
}

function cell(...texts: readonly string[]): Cell {
  return { lines: texts.map((text) => ({ text })) }
}
