import type { FC } from 'hono/jsx'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedStaticTest,
} from '../src/domain/certified-results.ts'
import { DataTable, type Row } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { words } from './words/en.ts'

const w = words.mySeals
const { trade } = words

export type SealResults = {
  readonly faces: readonly CertifiedFace[]
  readonly staticTests: readonly CertifiedStaticTest[]
}

/** What an order found and left: the newest of each, beside one another. */
export const SealResultsTable: FC<{ number: string; results: SealResults }> = (props) => {
  const { faces, staticTests } = props.results
  const rows = [
    ...faces.filter((one) => one.asFound !== null || one.asLeft !== null).map(faceRow),
    ...staticTests.filter((one) => one.isNewest).map(testRow),
  ]
  if (rows.length === 0) return <p class="soft">{w.nothingMeasured}</p>
  return (
    <DataTable
      caption={w.results(props.number)}
      isCaptionHidden
      columns={[
        { label: w.resultColumns.measured },
        { label: w.resultColumns.asFound, kind: 'number' },
        { label: w.resultColumns.asLeft, kind: 'number' },
        { label: w.resultColumns.verdict },
      ]}
      rows={rows}
    />
  )
}

function faceRow(face: CertifiedFace): Row {
  const verdict = face.asLeft?.verdict ?? 'open'
  return {
    cells: [
      trade.faceKind[face.kind],
      flatnessText(face.asFound),
      flatnessText(face.asLeft),
      face.asLeft === null ? (
        <VerdictMark verdict="missing" word={w.notMeasured} />
      ) : (
        <VerdictMark verdict={verdict} word={trade.verdict[verdict]} />
      ),
    ],
  }
}

function flatnessText(reading: CertifiedFlatness | null): string {
  if (reading === null) return w.notMeasured
  const { flatnessUm } = reading
  return flatnessUm === null ? w.unreadable : `${flatnessUm.text} ${trade.unit.um}`
}

/** Judged by the limit that applies; where both do, by the worse of the two. */
function testRow(test: CertifiedStaticTest): Row {
  const verdicts = [test.drop.verdict, test.leak.verdict]
  const verdict = verdicts.includes('fail') ? 'fail' : verdicts.includes('pass') ? 'pass' : 'open'
  return {
    cells: [
      `${w.staticTest}, ${trade.section[test.section].toLowerCase()}`,
      '',
      `${test.leakMlPerMin.text} ${trade.unit.mlPerMin}`,
      <VerdictMark verdict={verdict} word={trade.verdict[verdict]} />,
    ],
  }
}
