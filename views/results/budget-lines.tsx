import type { FC } from 'hono/jsx'
import type { Characteristic } from '../../src/domain/characteristic.ts'
import { figure } from '../../src/domain/figure.ts'
import { printedUnit } from '../../src/domain/printed-unit.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import type { BudgetLine } from '../../src/science/uncertainty/budget-line.ts'
import { DataTable } from '../components/data-table.tsx'
import { sourceUnit, sourceWord } from '../words/en/uncertainty-sources.ts'
import { words } from '../words/en.ts'

/** A budget as a table: each source, and below them what they come to. */
export const BudgetLines: FC<{
  uncertainty: Uncertainty
  characteristic: Characteristic
}> = ({ uncertainty, characteristic }) => {
  const w = words.results.table
  const { unit, storedPerPrinted } = printedUnit[characteristic]
  const { budget, effectiveDegreesOfFreedom: effective, standardUncertainty } = uncertainty
  const printed = (value: number) => figure(value / storedPerPrinted, digits).text
  return (
    <DataTable
      caption={w.caption(words.trade.unit[unit])}
      columns={[
        { label: w.source },
        { label: w.value, kind: 'number' },
        { label: w.distribution },
        { label: w.sensitivity, kind: 'number' },
        { label: w.contribution, kind: 'number' },
        { label: w.degrees, kind: 'number' },
      ]}
      rows={[
        ...budget.map((line) => ({
          cells: [
            sourceWord(line.source),
            `${figure(line.value, digits).text} ${sourceUnit(line.source, characteristic)}`.trim(),
            words.trade.distribution[line.distribution],
            printed(line.sensitivity),
            printed(line.contribution),
            degreesText(line.degreesOfFreedom),
          ],
        })),
        {
          cells: [
            <strong>{w.combined}</strong>,
            '',
            '',
            '',
            <strong>{printed(standardUncertainty)}</strong>,
            degreesText(effective),
          ],
        },
      ]}
    />
  )
}

const digits = { digits: 3 } as const

function degreesText(degrees: BudgetLine['degreesOfFreedom']): string {
  return degrees === null ? words.results.table.infinite : figure(degrees, digits).text
}
