import type { CertificateRecord } from '../../src/domain/certificate.ts'
import {
  causeText,
  certifiedPartTexts,
  findingText,
  partText,
} from '../../views/words/en/finding-texts.ts'
import { findingsWords } from '../../views/words/en/findings.ts'
import type { Block, Cell, TableBlock } from '../document.ts'

const words = findingsWords.certificate

/** What was seen when the seal was stripped, opinions apart, and what became of its parts. */
export function findingBlocks({ findings = [], parts = [] }: CertificateRecord): readonly Block[] {
  const opinions = findings.flatMap((one) => {
    const cause = causeText(one)
    return cause === null ? [] : [{ finding: one, cause }]
  })
  return [
    ...section(
      words.seenHeading,
      words.seenColumns,
      findings.map((one) => ({
        cells: [
          cell(findingsWords.parts[one.part]),
          cell(findingText(one), ...(one.observation === '' ? [] : [one.observation])),
        ],
      })),
    ),
    ...section(
      words.partsHeading,
      words.partsColumns,
      parts.map((one) => ({
        cells: [
          cell(partText(one)),
          cell(findingsWords.fates[one.fate]),
          cell(...certifiedPartTexts(one)),
        ],
      })),
    ),
    ...section(
      words.opinionHeading,
      words.opinionColumns,
      opinions.map(({ finding, cause }) => ({
        cells: [
          cell(`${findingsWords.parts[finding.part]}: ${findingsWords.terms[finding.term]}`),
          cell(cause),
        ],
      })),
    ),
    ...(opinions.length === 0
      ? []
      : [{ kind: 'paragraph', text: words.opinionNote, style: 'small' } as const]),
  ]
}

function section(
  heading: string,
  titles: readonly string[],
  rows: TableBlock['rows'],
): readonly Block[] {
  if (rows.length === 0) return []
  const columns = titles.map((title, index) => ({ title, share: index === 0 ? 120 : 180 }))
  return [
    { kind: 'subheading', text: heading },
    { kind: 'table', columns, rows },
  ]
}

function cell(...texts: readonly string[]): Cell {
  return { lines: texts.map((text) => ({ text })) }
}
