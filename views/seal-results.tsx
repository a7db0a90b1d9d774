import type { FC } from 'hono/jsx'
import { testVerdict } from '../src/domain/certified-judgement.ts'
import type { CertifiedMeasuredValue } from '../src/domain/certified-measured-value.ts'
import type {
  CertifiedFace,
  CertifiedFlatness,
  CertifiedStaticTest,
  CertifiedWholeFace,
} from '../src/domain/certified-results.ts'
import { flatnessSees } from '../src/domain/flatness-sees.ts'
import { type MeasuredPair, measuredPairs } from '../src/domain/measured-pairs.ts'
import { coverageFactorText } from '../src/domain/uncertain-figure.ts'
import type { VerdictKind } from '../src/plots/verdict-shape.ts'
import { Facts } from './components/facts.tsx'
import { VerdictMark } from './components/verdict-mark.tsx'
import { WholeFaceFigure } from './whole-face/whole-face-figure.tsx'
import { wholeFacePairs } from './words/en/whole-face-pairs.ts'
import { words } from './words/en.ts'

const w = words.mySeals
const { trade } = words

export type SealResultsProps = {
  readonly faces: readonly CertifiedFace[]
  readonly staticTests: readonly CertifiedStaticTest[]
  readonly measuredValues: readonly CertifiedMeasuredValue[]
}

/** What an order found and left, the newest of each, in lines that a phone can hold. */
export const SealResults: FC<SealResultsProps> = ({ faces, staticTests, measuredValues }) => {
  const lines = [
    ...faces.filter((one) => one.asFound !== null || one.asLeft !== null).map(faceLine),
    ...staticTests.filter((one) => one.isNewest).map(testLine),
    ...measuredPairs(measuredValues).map(valueLine),
  ]
  if (lines.length === 0) return <p class="soft">{w.nothingMeasured}</p>
  return (
    <ul class="result-lines">
      {lines.map((one) => (
        <li class="result-line">
          <span class="strong">{one.title}</span>
          <VerdictMark verdict={one.verdict} word={one.word} />
          {one.details.map((text) => (
            <span class="result-line-detail number">{text}</span>
          ))}
          {one.map === undefined ? null : <FaceMap map={one.map} title={one.title} />}
        </li>
      ))}
    </ul>
  )
}

type Line = {
  readonly title: string
  readonly verdict: VerdictKind
  readonly word: string
  readonly details: readonly string[]
  readonly map?: LineMap | undefined
}

type LineMap = { readonly whole: CertifiedWholeFace; readonly id: string }

/** Folded away: the figures are what most people come for. */
const FaceMap: FC<{ map: LineMap; title: string }> = ({ map, title }) => (
  <details class="fold result-line-detail">
    <summary>{`${words.wholeFace.mapTitle}: ${title}`}</summary>
    <div class="fold-body stack">
      <WholeFaceFigure wholeFace={map.whole} id={map.id} />
      <Facts layout="rows" pairs={wholeFacePairs(map.whole)} />
    </div>
  </details>
)

function faceLine(face: CertifiedFace): Line {
  const { asFound, asLeft } = face
  const upper = asLeft?.limit?.upper ?? null
  return {
    title: `${trade.faceKind[face.kind]}, ${w.flatness}`,
    verdict: asLeft?.verdict ?? 'missing',
    word: asLeft === null ? words.chrome.notMeasured : trade.verdict[asLeft.verdict],
    map: mapOf(face),
    details: [
      `${trade.condition['as-found']}: ${flatnessText(asFound)}`,
      `${trade.condition['as-left']}: ${flatnessText(asLeft)}`,
      ...(upper === null ? [] : [w.limit(`${upper.text} ${trade.unit.um}`)]),
    ],
  }
}

function mapOf({ kind, asLeft, asFound }: CertifiedFace): LineMap | undefined {
  const reading = asLeft ?? asFound
  if (reading?.wholeFace === undefined) return undefined
  return { whole: reading.wholeFace, id: `map-${kind}-${Date.parse(reading.recordedAt)}` }
}

function flatnessText(reading: CertifiedFlatness | null): string {
  if (reading === null) return words.chrome.notMeasured
  const { flatnessUm, method } = reading
  if (flatnessUm === null) return words.chrome.unreadable
  const { short } = words.flatnessSees[flatnessSees(method)]
  return `${flatnessUm.text} ${trade.unit.um} ${short}`
}

function testLine(test: CertifiedStaticTest): Line {
  const { drop, leak } = test
  const verdict = testVerdict(drop, leak)
  const dropLimit = limitText(drop.limit?.upper?.text, trade.unit.kPa)
  const leakLimit = limitText(leak.limit?.upperMlPerMin?.text, trade.unit.mlPerMin)
  return {
    title: `${w.staticTest}, ${trade.section[test.section].toLowerCase()}`,
    verdict,
    word: trade.overall[verdict],
    details: [
      `${trade.characteristic['static-drop']}: ${test.pressureDropKPa.text} ${trade.unit.kPa}${dropLimit}`,
      `${trade.characteristic['static-leak-rate']}: ${test.leakMlPerMin.text} ${trade.unit.mlPerMin}${leakLimit}`,
      ...new Set(
        [drop, leak].filter((one) => one.verdict === 'open').map((one) => trade.why[one.why]),
      ),
    ],
  }
}

/**
 * The newest before and after the work. What was only found is judged as found: nobody asks for
 * every one of these again.
 */
function valueLine({ characteristic, componentKind, asFound, asLeft }: MeasuredPair): Line {
  const judged = asLeft ?? asFound
  const on = componentKind === null ? '' : `, ${trade.componentKind[componentKind].toLowerCase()}`
  return {
    title: `${trade.characteristic[characteristic]}${on}`,
    verdict: judged?.verdict ?? 'missing',
    word: valueWord(asFound, asLeft),
    details: [
      `${trade.condition['as-found']}: ${valueText(asFound)}`,
      `${trade.condition['as-left']}: ${valueText(asLeft)}`,
      ...(judged === null ? [] : boundTexts(judged)),
      ...(judged?.verdict === 'open' ? [trade.why[judged.why]] : []),
    ],
  }
}

function valueWord(
  asFound: CertifiedMeasuredValue | null,
  asLeft: CertifiedMeasuredValue | null,
): string {
  if (asLeft !== null) return trade.verdict[asLeft.verdict]
  if (asFound === null) return words.chrome.notMeasured
  return `${trade.condition['as-found']}: ${trade.verdict[asFound.verdict].toLowerCase()}`
}

function valueText(measured: CertifiedMeasuredValue | null): string {
  if (measured === null) return words.chrome.notMeasured
  const { text, unit, coverageFactor } = measured
  const figure = `${text} ${trade.unit[unit]}`
  return coverageFactor === null
    ? figure
    : `${figure} ${w.factor(coverageFactorText(coverageFactor))}`
}

function boundTexts({ lower, upper, unit }: CertifiedMeasuredValue): readonly string[] {
  return [
    ...(lower === null ? [] : [w.limitAtLeast(`${lower.text} ${trade.unit[unit]}`)]),
    ...(upper === null ? [] : [w.limit(`${upper.text} ${trade.unit[unit]}`)]),
  ]
}

function limitText(upper: string | undefined, unit: string): string {
  return upper === undefined ? '' : `, ${w.limit(`${upper} ${unit}`)}`
}
