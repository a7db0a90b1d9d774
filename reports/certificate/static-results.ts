import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type {
  CertifiedJudgement,
  CertifiedStaticTest,
  Figure,
} from '../../src/domain/certified-results.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import type { Block, Cell, TableBlock } from '../document.ts'
import { limitCell, limitPicture, verdictLine } from './limit-cell.ts'

const { results: words, kPa } = certificateWords

/**
 * The static tests: drop and leak rate, each beside its limit. What counts comes first; a test
 * that a later one has overtaken is told after it, so that nobody takes it for the result.
 */
export function staticBlocks(record: CertificateRecord): readonly Block[] {
  const heading: Block = { kind: 'subheading', text: words.static }
  const counting = record.staticTests.filter((one) => one.isNewest)
  const overtaken = record.staticTests.filter((one) => !one.isNewest)
  if (counting.length === 0) return [heading, { kind: 'paragraph', text: words.noStatic }]
  return [
    heading,
    tableOf(counting),
    ...(overtaken.length === 0
      ? []
      : [{ kind: 'subheading', text: words.staticOvertaken } as const, tableOf(overtaken)]),
  ]
}

function tableOf(tests: readonly CertifiedStaticTest[]): TableBlock {
  return {
    kind: 'table',
    columns: words.staticColumns.map((title, index) => ({
      title,
      share: [66, 122, 128, 143][index] ?? 1,
    })),
    rows: tests.flatMap((test) => [{ cells: dropCells(test) }, { cells: leakCells(test) }]),
  }
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
      lines: [verdictLine(drop), { text: `${pressureDropKPa.text} ${kPa}`, style: 'value' }],
    },
    barCell(drop, pressureDropKPa),
    limitCell(drop.limit, kPa),
  ]
}

function leakCells(test: CertifiedStaticTest): readonly Cell[] {
  const { leak, leakPaM3PerS, leakMlPerMin, leakTemperatureC } = test
  return [
    nameCell(test, words.leak),
    {
      lines: [
        verdictLine(leak),
        { text: `${leakPaM3PerS.text} ${words.paM3PerS}`, style: 'value' },
        { text: words.flow(leakMlPerMin.text) },
        { text: words.leakAt(leakTemperatureC.text), style: 'small' },
      ],
    },
    barCell(leak, leakPaM3PerS),
    limitCell(leak.limit, words.paM3PerS),
  ]
}

/** No bar beside a limit that does not apply to this test. */
function barCell({ limit, verdict }: CertifiedJudgement, result: Figure): Cell {
  if (limit === null || verdict === 'open') return { lines: [{ text: words.noBar }] }
  const bar = limitPicture(limit, result)
  return bar === undefined ? { lines: [{ text: words.noBar }] } : { lines: [], bar }
}
