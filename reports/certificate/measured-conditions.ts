import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type { CertifiedMeasuredValue } from '../../src/domain/certified-measured-value.ts'
import type { Figure } from '../../src/domain/certified-results.ts'
import { certificateWords } from '../../views/words/en/certificate.ts'
import { certificateDecisionWords as decisions } from '../../views/words/en/certificate-decisions.ts'
import { faceStateText } from '../../views/words/en/face-state-text.ts'
import { finishWords } from '../../views/words/en/finish.ts'
import { sixteenPercentText } from '../../views/words/en/sixteen-percent-text.ts'
import type { Block, Cell, Line, TableBlock } from '../document.ts'
import { placeName } from './decision-names.ts'
import { printMoment } from './print-when.ts'

const { conditions: words, results } = certificateWords

/** How each value read with an instrument came about; nothing where none was read. */
export function measuredConditionBlocks({ measuredValues }: CertificateRecord): readonly Block[] {
  if (measuredValues.length === 0) return []
  return [
    { kind: 'subheading', text: words.values },
    {
      kind: 'table',
      columns: words.valueColumns.map((title, index) => ({
        title,
        share: [120, 120, 90, 130][index] ?? 1,
      })),
      rows: measuredValues.map(row),
    },
  ]
}

function row(measured: CertifiedMeasuredValue): TableBlock['rows'][number] {
  const cells = cellsOf(measured)
  return measured.note.trim() === '' ? { cells } : { cells, note: words.note(measured.note) }
}

function cellsOf(measured: CertifiedMeasuredValue): readonly Cell[] {
  const { characteristic, componentKind, condition, isNewest, readings } = measured
  const place = placeName({ componentKind, section: null })
  return [
    {
      lines: [
        { text: decisions.characteristics[characteristic], style: 'strong' },
        ...(place === undefined ? [] : [{ text: place }]),
        { text: condition === 'as-found' ? results.asFound : results.asLeft },
        { text: printMoment(measured.recordedAt) },
        ...(isNewest ? [] : [{ text: words.overtaken, style: 'small' } as const]),
      ],
    },
    {
      lines: [
        {
          text:
            readings.length === 0
              ? words.readingsNotKept
              : words.readAs(readings.join('; '), words.lengthUnits[measured.readingUnit]),
        },
        { text: `${measured.text} ${decisions.units[measured.unit]}` },
        ...traceLines(measured),
      ],
    },
    cell(measured.instrumentNumbers.join(', ')),
    cell(...setUp(measured), words.by(measured.recordedByName)),
  ]
}

/** The largest trace, and what the 16 % rule says of them. */
function traceLines({ traces }: CertifiedMeasuredValue): readonly Line[] {
  if (traces === undefined) return []
  const { count, largest, rule } = traces
  const { ruleLabel } = finishWords
  return [
    ...(count === 1 ? [] : [{ text: finishWords.traces(count, largest.text) }]),
    ...(rule === null
      ? []
      : [
          {
            text: `${ruleLabel}: ${sixteenPercentText(rule, count)}`,
            style: 'small',
          } as const,
        ]),
  ]
}

/** What was stated of how it was read; the cut-off is said to be missing, since Ra rests on it. */
function setUp(measured: CertifiedMeasuredValue): readonly string[] {
  const said = (figure: Figure | null, word: (text: string) => string) =>
    figure === null ? [] : [word(figure.text)]
  const isFinish = measured.characteristic === 'roughness'
  const state = faceStateText(measured.faceState ?? null, measured.faceByLog ?? null)
  const isStateMissed = isFinish && measured.condition === 'as-left' && state === ''
  return [
    ...(isFinish && measured.cutOffMm === null ? [words.cutOffUnknown] : []),
    ...said(measured.cutOffMm, words.cutOff),
    ...(isFinish && measured.traceDirection == null ? [words.traceUnknown] : []),
    ...(measured.traceDirection == null ? [] : [words.traces[measured.traceDirection]]),
    ...said(measured.evaluationLengthMm ?? null, finishWords.evaluation),
    ...said(measured.tipRadiusUm ?? null, words.tip),
    ...(state === '' ? [] : [state]),
    ...(isStateMissed ? [finishWords.stateUnknown] : []),
    ...said(measured.leverAngleDeg, words.lever),
    ...said(measured.temperatureHalfWidthK, words.warmth),
    ...said(measured.settingStandardUncertaintyUm, words.setting),
    ...said(measured.sizeMm, words.bore),
  ]
}

function cell(...texts: readonly string[]): Cell {
  return { lines: texts.map((text) => ({ text })) }
}
