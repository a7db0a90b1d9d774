import type { CertificateRecord, CertifiedStaticTest } from '../../src/domain/certificate.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Block, Cell, TableBlock } from '../document.ts'
import { limitCell, verdictLine } from './limit-cell.ts'

const { results: words, kPa } = certificateWords

/** The static tests: drop and leak rate, each beside its limit. */
export function staticBlocks(record: CertificateRecord): readonly Block[] {
  const heading: Block = { kind: 'subheading', text: words.static }
  if (record.staticTests.length === 0) {
    return [heading, { kind: 'paragraph', text: words.noStatic }]
  }
  const table: TableBlock = {
    kind: 'table',
    columns: words.staticColumns.map((title, index) => ({
      title,
      share: [130, 196, 136][index] ?? 1,
    })),
    rows: record.staticTests.flatMap((test) => [
      { cells: dropCells(test) },
      { cells: leakCells(test) },
    ]),
  }
  return [heading, table]
}

function nameCell(test: CertifiedStaticTest, name: string): Cell {
  return {
    lines: [
      { text: name, style: 'strong' },
      { text: words.sections[test.section] },
      ...(test.isNewest ? [] : [{ text: words.superseded, style: 'small' } as const]),
    ],
  }
}

function dropCells(test: CertifiedStaticTest): readonly Cell[] {
  const { pressureDropKPa, drop } = test
  return [
    nameCell(test, words.drop),
    {
      lines: [
        verdictLine(drop),
        { text: `${pressureDropKPa.text} ${kPa}`, style: 'value' },
        { text: words.noUncertainty, style: 'small' },
      ],
    },
    limitCell(drop.limit, isComparable(drop) ? pressureDropKPa : null, kPa),
  ]
}

function leakCells(test: CertifiedStaticTest): readonly Cell[] {
  const { leak, leakPaM3PerS, leakMlPerMin, leakTemperatureC, uncompensatedPaM3PerS } = test
  return [
    nameCell(test, words.leak),
    {
      lines: [
        verdictLine(leak),
        { text: `${leakPaM3PerS.text} ${words.paM3PerS}`, style: 'value' },
        { text: words.leakAt(leakTemperatureC.text) },
        { text: words.mlPerMin(leakMlPerMin.text, leakTemperatureC.text) },
        { text: words.uncompensated(uncompensatedPaM3PerS.text), style: 'small' },
        { text: words.noUncertainty, style: 'small' },
      ],
    },
    limitCell(leak.limit, leakPaM3PerS, words.paM3PerS),
  ]
}

/** No bar beside a limit that does not apply to this test. */
function isComparable({ verdict }: CertifiedStaticTest['drop']): boolean {
  return verdict !== 'open'
}
