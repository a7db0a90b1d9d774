import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { Component } from '../src/domain/seal.ts'
import { DataTable } from './components/data-table.tsx'
import { numberText } from './figures/number-text.ts'
import { minuteText } from './figures/time-text.ts'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

const w = words.inspection
const { trade } = words

/** How the order came here, step by step, and what the seal is made of. */
export const EvidenceCourse: FC<{ evidence: Evidence }> = ({ evidence }) => (
  <>
    <DataTable
      caption={w.course}
      columns={[
        { label: w.courseColumns.at },
        { label: w.courseColumns.step },
        { label: w.courseColumns.by },
        { label: w.courseColumns.reason },
      ]}
      rows={evidence.stageChanges.map((one) => ({
        cells: [
          minuteText(one.at),
          trade.stage[one.to],
          one.byName,
          one.to === 'handed-over' ? noteAt(evidence, one.at) : one.reason,
        ],
      }))}
    />
    <DataTable
      caption={w.components}
      columns={[
        { label: w.componentColumns.kind },
        { label: w.componentColumns.material },
        { label: w.componentColumns.diameters, kind: 'number' },
      ]}
      rows={evidence.seal.components.map((one) => ({
        cells: [
          trade.componentKind[one.kind],
          tradeWord(trade.faceMaterial, one.material),
          diametersText(one),
        ],
      }))}
    />
  </>
)

/** The technician's words stand on the hand-over, not on the step; only the latest is at hand. */
function noteAt(evidence: Evidence, at: string): string {
  return evidence.handOver?.at === at ? evidence.handOver.note : ''
}

function diametersText({ outerDiameterMm, innerDiameterMm }: Component): string {
  const both = [outerDiameterMm, innerDiameterMm]
  if (both.every((mm) => mm === null)) return ''
  return both.map((mm) => (mm === null ? words.chrome.notStated : numberText(mm))).join(' × ')
}
