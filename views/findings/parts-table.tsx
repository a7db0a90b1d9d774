import type { FC } from 'hono/jsx'
import type { PartLine } from '../../src/domain/part-line.ts'
import { DataTable } from '../components/data-table.tsx'
import { minuteText } from '../figures/time-text.ts'
import { Struck } from '../order-record.tsx'
import { identityText, partText } from '../words/en/finding-texts.ts'
import { words } from '../words/en.ts'

/** What becomes of the parts; what was corrected since stays, struck. */
export const PartsTable: FC<{
  lines: readonly PartLine[]
  orderNumber: string
  canCorrect: boolean
}> = ({ lines, orderNumber, canCorrect }) => {
  const w = words.findings
  const act = { label: w.correct, kind: 'act', isLabelHidden: true } as const
  return (
    <DataTable
      caption={w.assemblyPartsTitle}
      isCaptionHidden
      columns={[
        { label: w.columns.part },
        { label: w.columns.fate },
        { label: w.columns.identity },
        { label: w.columns.recorded },
        ...(canCorrect ? [act] : []),
      ]}
      rows={lines.map((one) => {
        const isReplaced = one.replacedById !== null
        return {
          mark: isReplaced ? ('quiet' as const) : undefined,
          cells: [
            <Struck isReplaced={isReplaced}>{partText(one)}</Struck>,
            <Struck isReplaced={isReplaced}>{w.fates[one.fate]}</Struck>,
            [identityText(one), one.note].filter((text) => text !== '').join('. '),
            w.recordedBy(one.recordedByName, minuteText(one.recordedAt)),
            ...(canCorrect
              ? [
                  isReplaced ? (
                    w.replaced
                  ) : (
                    <a href={`/work-orders/${orderNumber}/part-lines/new?replaces=${one.id}`}>
                      {w.correct}
                    </a>
                  ),
                ]
              : []),
          ],
        }
      })}
    />
  )
}
