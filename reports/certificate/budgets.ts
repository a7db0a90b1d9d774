import type { CertificateRecord } from '../../src/domain/certificate.ts'
import type { CertifiedResult, CertifiedUncertainty } from '../../src/domain/certified-decision.ts'
import { figure } from '../../src/domain/figure.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import { coverageFactorText } from '../../src/domain/uncertain-figure.ts'
import type { BudgetLine } from '../../src/science/uncertainty/budget-line.ts'
import { certificateDecisionWords } from '../../views/words/en/certificate-decisions.ts'
import { sourceUnit, sourceWord } from '../../views/words/en/uncertainty-sources.ts'
import type { Block, Cell } from '../document.ts'
import { resultName } from './decision-names.ts'

const { budgets: words, units } = certificateDecisionWords
const digits = { digits: 3 } as const

/** The budget of each result line by line, so that somebody else can work it out again. */
export function budgetBlocks({ results }: CertificateRecord): readonly Block[] {
  const known = results.flatMap((result) =>
    result.uncertainty === null ? [] : [{ result, uncertainty: result.uncertainty }],
  )
  if (known.length === 0) return []
  return [
    { kind: 'heading', text: words.heading },
    { kind: 'paragraph', text: words.intro },
    ...known.flatMap(({ result, uncertainty }) => budgetOf(result, uncertainty)),
  ]
}

function budgetOf(result: CertifiedResult, uncertainty: CertifiedUncertainty): readonly Block[] {
  const { storedPerPrinted } = printedUnit[result.characteristic]
  const printed = (stored: number) => figure(stored / storedPerPrinted, digits).text
  const { standardUncertainty, expandedUncertainty, coverageFactor, leftOut } = uncertainty
  const total = words.total(
    printed(standardUncertainty),
    coverageFactorText(coverageFactor),
    printed(expandedUncertainty),
    units[result.unit],
  )
  return [
    { kind: 'subheading', text: resultName(result) },
    {
      kind: 'table',
      columns: words.columns.map((title, index) => ({
        title,
        share: [180, 130, 90, 80][index] ?? 1,
      })),
      rows: [
        ...uncertainty.budget.map((one) => ({ cells: lineCells(one, result, printed) })),
        { cells: combinedCells(uncertainty, printed), note: total },
      ],
    },
    ...(leftOut.length === 0
      ? []
      : [
          {
            kind: 'paragraph',
            text: words.leftOut(leftOut.map(sourceWord).join(', ')),
            style: 'small',
          } as const,
        ]),
  ]
}

function lineCells(
  line: BudgetLine,
  { characteristic }: CertifiedResult,
  printed: (stored: number) => string,
): readonly Cell[] {
  const value = `${figure(line.value, digits).text} ${sourceUnit(line.source, characteristic)}`
  const shape = words.distribution[line.distribution]
  return [
    { lines: [{ text: sourceWord(line.source) }] },
    { lines: [{ text: `${value.trim()}, ${shape.toLowerCase()}` }] },
    { lines: [{ text: printed(line.contribution) }] },
    { lines: [{ text: degreesText(line.degreesOfFreedom) }] },
  ]
}

function combinedCells(
  { standardUncertainty, effectiveDegreesOfFreedom }: CertifiedUncertainty,
  printed: (stored: number) => string,
): readonly Cell[] {
  return [
    { lines: [{ text: words.combined, style: 'strong' }] },
    { lines: [{ text: words.notApplicable }] },
    { lines: [{ text: printed(standardUncertainty), style: 'strong' }] },
    { lines: [{ text: degreesText(effectiveDegreesOfFreedom) }] },
  ]
}

function degreesText(degrees: number | null): string {
  return degrees === null ? words.infinite : figure(degrees, digits).text
}
