import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type { CertifiedMeasuredValue } from '../../src/domain/certified-measured-value.ts'
import { type MeasuredPair, measuredPairs } from '../../src/domain/measured-pairs.ts'
import { coverageFactorText } from '../../src/domain/uncertain-figure.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords as decisions } from '../../views/words/en/certificate-decisions.ts'
import type { Block, Cell } from '../document.ts'
import { limitThatHolds, placeName } from './decision-names.ts'
import { limitCell, verdictLine } from './limit-cell.ts'

const { results: words, ...common } = certificateWords

/** Finish, heights and run-out, what was found beside what was left; nothing where none was read. */
export function measuredBlocks({ measuredValues }: CertificateRecord): readonly Block[] {
  const pairs = measuredPairs(measuredValues)
  if (pairs.length === 0) return []
  return [
    { kind: 'subheading', text: words.measured },
    {
      kind: 'table',
      columns: words.measuredColumns.map((title, index) => ({
        title,
        share: [100, 116, 116, 130][index] ?? 1,
      })),
      rows: pairs.map((pair) => ({ cells: pairCells(pair) })),
    },
  ]
}

function pairCells(pair: MeasuredPair): readonly Cell[] {
  const { characteristic, componentKind, unit, asFound, asLeft } = pair
  const place = placeName({ componentKind, section: null })
  return [
    {
      lines: [
        { text: decisions.characteristics[characteristic], style: 'strong' },
        ...(place === undefined ? [] : [{ text: place }]),
      ],
    },
    valueCell(asFound),
    valueCell(asLeft),
    limitOf(asLeft ?? asFound, decisions.units[unit]),
  ]
}

function valueCell(measured: CertifiedMeasuredValue | null): Cell {
  if (measured === null) return { lines: [{ text: common.notMeasured }] }
  const { text, unit, coverageFactor } = measured
  return {
    lines: [
      verdictLine(measured),
      { text: `${text} ${decisions.units[unit]}`, style: 'value' },
      {
        text:
          coverageFactor === null
            ? words.noUncertainty
            : words.plusMinus(coverageFactorText(coverageFactor)),
        style: 'small',
      },
    ],
  }
}

/** A limit per millimetre also as it holds here. */
function limitOf(measured: CertifiedMeasuredValue | null, unit: string): Cell {
  const cell = limitCell(measured?.limit ?? null, unit)
  const isPerMm = measured?.limit?.perMmOf != null
  const isKnown = measured !== null && (measured.upper !== null || measured.lower !== null)
  if (!isPerMm || !isKnown) return cell
  return { lines: [...cell.lines, { text: words.here(limitThatHolds(measured)) }] }
}
