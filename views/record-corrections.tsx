import type { FC } from 'hono/jsx'
import type { CertifiedCorrection, CertifiedValue } from '../src/domain/certificate.ts'
import { printedUnit } from '../src/domain/printed-unit.ts'
import { DataTable } from './components/data-table.tsx'
import { minuteText } from './figures/time-text.ts'
import { words } from './words/en.ts'

const w = words.inspection
const { trade } = words

/** What was corrected: both values, who, when and why. */
export const RecordCorrections: FC<{ corrections: readonly CertifiedCorrection[] }> = (props) => {
  if (props.corrections.length === 0) {
    return (
      <section>
        <h2>{w.corrections}</h2>
        <p class="soft">{w.noCorrections}</p>
      </section>
    )
  }
  return (
    <DataTable
      caption={w.corrections}
      columns={[
        { label: w.correctionColumns.what },
        { label: w.correctionColumns.was },
        { label: w.correctionColumns.became },
        { label: w.correctionColumns.why },
        { label: w.correctionColumns.by },
      ]}
      rows={props.corrections.map((one) => ({
        cells: [
          subjectText(one.subject),
          <Value value={one.was} unit={unitOf(one)} />,
          <Value value={one.became} unit={unitOf(one)} />,
          one.reason,
          one.byName,
        ],
      }))}
    />
  )
}

function subjectText(subject: CertifiedCorrection['subject']): string {
  if (subject.kind === 'flatness') {
    return `${trade.faceKind[subject.face]}, ${trade.condition[subject.condition].toLowerCase()}`
  }
  if (subject.kind === 'measured-value') {
    return `${trade.characteristic[subject.characteristic]}, ${trade.condition[subject.condition].toLowerCase()}`
  }
  return `${w.staticTest}, ${trade.section[subject.section].toLowerCase()}`
}

function unitOf({ subject }: CertifiedCorrection): string {
  if (subject.kind === 'measured-value') {
    return trade.unit[printedUnit[subject.characteristic].unit]
  }
  return subject.kind === 'flatness' ? trade.unit.um : trade.unit.paM3PerS
}

const Value: FC<{ value: CertifiedValue; unit: string }> = ({ value, unit }) => (
  <>
    <span class="number">
      {value.figure === null ? words.chrome.unreadable : `${value.figure.text} ${unit}`}
    </span>
    <p class="cell-detail">{w.recordedAt(minuteText(value.recordedAt))}</p>
  </>
)
