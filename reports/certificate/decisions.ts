import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type { CertifiedResult } from '../../src/domain/certified-decision.ts'
import { missingFromBudget } from '../../src/domain/missing-from-budget.ts'
import { coverageFactorText } from '../../src/domain/uncertain-figure.ts'
import { certificateDecisionWords as words } from '../../views/words/en/certificate-decisions.ts'
import { sourceWord } from '../../views/words/en/uncertainty-sources.ts'
import type { Block, Cell, Line } from '../document.ts'
import { decisionDrawing } from './decision-drawing.ts'
import { limitThatHolds, resultName, valueWithUnit } from './decision-names.ts'
import { verdictLine } from './limit-cell.ts'
import { printMoment } from './print-when.ts'

/** How each result that counts was decided; nothing in a record that knew no uncertainty. */
export function decisionBlocks({ results }: CertificateRecord): readonly Block[] {
  if (results.length === 0) return []
  return [
    { kind: 'heading', text: words.heading },
    { kind: 'paragraph', text: words.intro },
    {
      kind: 'table',
      columns: words.columns.map((title, index) => ({
        title,
        share: [105, 126, 240][index] ?? 1,
      })),
      rows: results.map((one) => ({ cells: cellsOf(one) })),
    },
  ]
}

function cellsOf(result: CertifiedResult): readonly Cell[] {
  const { instrumentNumbers, method, recordedByName } = result
  const drawing = decisionDrawing(result)
  return [
    {
      lines: [
        { text: resultName(result), style: 'strong' },
        { text: words.by(method, instrumentNumbers.join(', '), recordedByName), style: 'small' },
      ],
    },
    { lines: [...verdictLines(result), ...valueLines(result), ...certaintyLines(result)] },
    drawing === undefined
      ? { lines: [{ text: whyNotWeighed(result) }] }
      : { lines: [], bar: drawing },
  ]
}

function verdictLines(result: CertifiedResult): readonly Line[] {
  return result.concession === null
    ? [verdictLine(result)]
    : [verdictLine(result), small(words.conceded)]
}

function valueLines(result: CertifiedResult): readonly Line[] {
  const { uncertainty } = result
  return [
    { text: valueWithUnit(result), style: 'value' },
    small(
      uncertainty === null
        ? words.noUncertainty
        : words.factor(coverageFactorText(uncertainty.coverageFactor)),
    ),
    { text: limitThatHolds(result) },
  ]
}

function certaintyLines(result: CertifiedResult): readonly Line[] {
  const { conformancePercent, riskPercent, verdict, largestSource, why } = result
  const wordOf = why === 'incomplete-budget' ? words.missing : words.improve
  const isOpen = verdict === 'undecidable' && largestSource !== null
  const missing = missingFrom(result)
  return [
    ...(conformancePercent === null ? [] : [small(words.conforms(conformancePercent.text))]),
    ...(riskPercent === null ? [] : [small(words.risk(riskPercent.text))]),
    ...(isOpen ? [small(wordOf(sourceWord(largestSource)))] : []),
    ...(missing.length === 0 ? [] : [small(words.incomplete(missing.map(sourceWord).join(', ')))]),
  ]
}

/** What a budget lacks beside a verdict that stands without it; a refused one names it itself. */
function missingFrom(result: CertifiedResult) {
  const { characteristic, uncertainty, decision, verdict, why } = result
  if (uncertainty === null || decision !== null) return []
  if (verdict === 'open' || why === 'incomplete-budget') return []
  return missingFromBudget(uncertainty, characteristic)
}

function whyNotWeighed(result: CertifiedResult): string {
  const isInPart = result.why === 'incomplete-budget' || missingFrom(result).length > 0
  return isInPart ? words.notWeighedInFull : words.notWeighed
}

function small(text: string): Line {
  return { text, style: 'small' }
}

/** What was accepted, allowed or left standing by a person's word, each with its reason. */
export function waiverBlocks(record: CertificateRecord): readonly Block[] {
  const { concessions, exceptions, doubts } = words
  return [
    ...listed(
      concessions.heading,
      concessions.intro,
      record.results.flatMap((one) => concessionItem(one)),
    ),
    ...listed(
      exceptions.heading,
      exceptions.intro,
      record.exceptions.map((one) =>
        exceptions.item({
          number: one.instrumentNumber,
          fault: exceptions.faults[one.fault],
          reason: one.reason,
          by: one.allowedByName,
          at: printMoment(one.allowedAt),
        }),
      ),
    ),
    ...listed(
      doubts.heading,
      null,
      record.doubts.map(({ instrumentNumber, foundOn, answer, reason, byName }) =>
        doubts.item(
          instrumentNumber,
          foundOn,
          answer === null ? doubts.unanswered : doubts.answers[answer],
          reason,
          byName,
        ),
      ),
    ),
  ]
}

function concessionItem(result: CertifiedResult): readonly string[] {
  const { concession } = result
  if (concession === null) return []
  return [
    words.concessions.item({
      what: resultName(result),
      value: valueWithUnit(result),
      limit: limitThatHolds(result),
      reason: concession.reason,
      reference: concession.customerReference,
      by: concession.byName,
      at: printMoment(concession.at),
    }),
  ]
}

function listed(heading: string, intro: string | null, items: readonly string[]): readonly Block[] {
  if (items.length === 0) return []
  return [
    { kind: 'heading', text: heading },
    ...(intro === null ? [] : [{ kind: 'paragraph', text: intro } as const]),
    { kind: 'list', items },
  ]
}
