import type { FC } from 'hono/jsx'
import type { CertificateRecord } from '../src/domain/certificate.ts'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedJudgement,
  CertifiedStaticTest,
} from '../src/domain/certified-results.ts'
import { DataTable, type Row } from './components/data-table.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { minuteText } from './figures/time-text.ts'
import { InstrumentsOnDay } from './instruments-on-day.tsx'
import { LimitCell, ResultCell } from './result-cells.tsx'
import { tradeWord } from './words/en/trade.ts'
import { words } from './words/en.ts'

const w = words.inspection
const { trade } = words

/** Each result of a record beside its limit, with instrument, hand and day. */
export const RecordResults: FC<{ record: CertificateRecord }> = ({ record }) => (
  <DataTable
    id="results"
    caption={w.results}
    columns={[
      { label: w.resultColumns.measured },
      { label: w.resultColumns.result },
      { label: w.resultColumns.verdict },
      { label: w.resultColumns.limit },
      { label: w.resultColumns.instruments },
      { label: w.resultColumns.recorded },
    ]}
    rows={[
      ...record.faces.flatMap((face) => faceRows(record, face)),
      ...record.staticTests.flatMap((test) => testRows(record, test)),
      ...(record.staticTests.length === 0 ? [missingRow(w.staticTest)] : []),
    ]}
  />
)

/** In the order in which they were read; what is missing comes last. */
function faceRows(record: CertificateRecord, face: CertifiedFace): Row[] {
  const standing = [face.asFound, face.asLeft].filter((one) => one !== null)
  const readings = [...face.earlier, ...standing].sort((a, b) =>
    a.recordedAt < b.recordedAt ? -1 : a.recordedAt > b.recordedAt ? 1 : 0,
  )
  const left = face.asLeft === null ? [missingRow(faceTitle(face, 'as-left'))] : []
  return [
    ...readings.map((one) => flatnessRow(record, face, one, face.earlier.includes(one))),
    ...left,
  ]
}

function faceTitle(face: CertifiedFace, condition: CertifiedFlatness['condition']): string {
  return `${trade.faceKind[face.kind]}, ${trade.condition[condition].toLowerCase()}`
}

function flatnessRow(
  record: CertificateRecord,
  face: CertifiedFace,
  reading: CertifiedFlatness,
  isOvertaken: boolean,
): Row {
  const { flatnessUm, flatnessUin, expandedUncertaintyUm, limit } = reading
  const uncertainty =
    expandedUncertaintyUm === null
      ? []
      : [w.uncertainty(expandedUncertaintyUm.text, reading.coverageFactor)]
  const second = flatnessUin === null ? [] : [`${flatnessUin.text} ${trade.unit.uin}`]
  return {
    mark: markOf(reading, isOvertaken),
    cells: [
      <>
        {faceTitle(face, reading.condition)}
        <p class="cell-detail">
          {[w.flatness, tradeWord(trade.faceMaterial, face.material)].join(' · ')}
        </p>
        <p class="cell-detail">{readingDetail(reading)}</p>
        <Note note={reading.note} />
      </>,
      <ResultCell
        figure={flatnessUm}
        upper={limit?.upper ?? null}
        unit={trade.unit.um}
        details={[[...second, ...uncertainty].join(' · ')]}
      />,
      <Verdict judged={reading} overtaken={isOvertaken ? w.overtaken : null} />,
      <LimitCell limit={limit} unit={trade.unit.um} />,
      <InstrumentsOnDay
        instruments={record.instruments}
        numbers={[reading.lampNumber, reading.flatNumber]}
        day={reading.recordedAt.slice(0, 10)}
      />,
      <Recorded name={reading.recordedByName} at={reading.recordedAt} />,
    ],
  }
}

function readingDetail(reading: CertifiedFlatness): string {
  const { directions, viewingAngleDeg, soakMin, temperatureC } = reading
  const counts = directions.map((one) => w.direction(one.bandsTyped, one.directionDeg)).join(', ')
  return [
    tradeWord(trade.pattern, reading.pattern),
    ...(counts === '' ? [] : [w.bands(counts, directions.length > 1)]),
    ...(reading.ringCentre === null ? [] : [trade.ringCentre[reading.ringCentre]]),
    w.angle(viewingAngleDeg.text),
    ...(soakMin === null ? [] : [w.soak(soakMin.text)]),
    ...(temperatureC === null ? [] : [w.temperature(temperatureC.text)]),
  ].join('; ')
}

function testRows(record: CertificateRecord, test: CertifiedStaticTest): Row[] {
  const overtaken = test.isNewest ? null : w.overtakenTest
  const numbers = [test.gaugeNumber, test.thermometerNumber].filter((one) => one !== null)
  const day = test.startedAt.slice(0, 10)
  const tail = [
    <InstrumentsOnDay instruments={record.instruments} numbers={numbers} day={day} />,
    <Recorded name={test.recordedByName} at={test.recordedAt} />,
  ]
  const title = `${w.staticTest}, ${trade.section[test.section].toLowerCase()}`
  return [
    {
      mark: markOf(test.leak, !test.isNewest),
      cells: [
        <>
          {title}
          <p class="cell-detail">{w.leak}</p>
          <p class="cell-detail">{testDetail(test)}</p>
          <Note note={test.note} />
        </>,
        <ResultCell
          figure={test.leakMlPerMin}
          upper={test.leak.limit?.upperMlPerMin ?? null}
          unit={trade.unit.mlPerMin}
          details={[`${test.leakPaM3PerS.text} ${trade.unit.paM3PerS}`]}
        />,
        <Verdict judged={test.leak} overtaken={overtaken} />,
        <LimitCell limit={test.leak.limit} unit={trade.unit.paM3PerS} />,
        ...tail,
      ],
    },
    {
      mark: markOf(test.drop, !test.isNewest),
      cells: [
        <>
          {title}
          <p class="cell-detail">{w.drop}</p>
        </>,
        <ResultCell
          figure={test.pressureDropKPa}
          upper={test.drop.limit?.upper ?? null}
          unit={trade.unit.kPa}
          details={[]}
        />,
        <Verdict judged={test.drop} overtaken={overtaken} />,
        <LimitCell limit={test.drop.limit} unit={trade.unit.kPa} />,
        ...tail,
      ],
    },
  ]
}

function testDetail(test: CertifiedStaticTest): string {
  const { volumeL, durationS, startTemperatureC, endTemperatureC } = test
  return [
    w.pressures(test.startPressureKPaAbs.text, test.endPressureKPaAbs.text),
    w.conditions(volumeL.text, durationS.text, startTemperatureC.text, endTemperatureC.text),
  ].join('; ')
}

function missingRow(title: string): Row {
  const mark = <VerdictMark verdict="missing" word={w.notMeasured} />
  return { mark: 'stop', cells: [title, '', mark, '', '', ''] }
}

function markOf(judged: CertifiedJudgement, isOvertaken: boolean): Row['mark'] {
  if (isOvertaken) return 'quiet'
  return judged.verdict === 'fail' ? 'stop' : undefined
}

const Verdict: FC<{ judged: CertifiedJudgement; overtaken: string | null }> = (props) => {
  const { judged, overtaken } = props
  const isClear = judged.why === 'within-limit' || judged.why === 'beyond-limit'
  return (
    <>
      <VerdictMark verdict={judged.verdict} word={trade.verdict[judged.verdict]} />
      {isClear ? null : <p class="cell-detail">{trade.why[judged.why]}</p>}
      {overtaken === null ? null : <p class="cell-detail">{overtaken}</p>}
    </>
  )
}

const Recorded: FC<{ name: string; at: string }> = ({ name, at }) => (
  <>
    {name}
    <p class="cell-detail">{minuteText(at)}</p>
  </>
)

const Note: FC<{ note: string }> = ({ note }) =>
  note === '' ? null : <p class="cell-detail">{w.noteOf(note)}</p>
