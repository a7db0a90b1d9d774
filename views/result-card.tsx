import type { FC } from 'hono/jsx'
import type { Evidence } from '../src/domain/evidence.ts'
import type { EvidenceResult } from '../src/domain/evidence-results.ts'
import type { FlatnessSees } from '../src/domain/flatness-sees.ts'
import { coverageFactorText } from '../src/domain/uncertain-figure.ts'
import { VerdictMark } from './components/verdict-mark.tsx'
import { ConcessionForm, type ConcessionTyped } from './concession-form.tsx'
import { ConcessionText } from './concession-text.tsx'
import { secondResultText } from './figures/result-text.ts'
import { minuteText } from './figures/time-text.ts'
import { uncertainText } from './figures/uncertain-text.ts'
import { InstrumentLabels } from './instrument-labels.tsx'
import { JudgedLimit } from './judged-limit.tsx'
import { JudgedPicture } from './judged-picture.tsx'
import { recordDetail } from './record-detail.ts'
import { CannotDecide, VerdictWords } from './verdict-words.tsx'
import { WholeFaceFacts } from './whole-face/whole-face-facts.tsx'
import { WholeFaceFigure } from './whole-face/whole-face-figure.tsx'
import { resultTitle } from './words/en/inspection.ts'
import { words } from './words/en.ts'

const w = words.inspection

export type ResultCardProps = {
  readonly evidence: Evidence
  readonly result: EvidenceResult
  /** What was typed into its form and refused; null where it was not this form. */
  readonly refused: ConcessionTyped | null
  readonly formKey: string
  /** The figure comes from the same record as the one below it, which says whose it is. */
  readonly isRepeated: boolean
}

/** One result that counts: figure and picture, verdict and what follows, and whose it is. */
export const ResultCard: FC<ResultCardProps> = (props) => {
  const { evidence, result, isRepeated } = props
  const { counted, shown } = result
  const { judged } = shown
  const id = `${counted.subjectKind}-${counted.subjectId}-${judged.characteristic}`
  return (
    <article class="result-card" aria-labelledby={id}>
      <h3 class="result-card-title" id={id}>
        {resultTitle(counted, judged.characteristic)}
      </h3>
      <div class="result-card-figure">
        <ResultFigure result={result} number={evidence.workOrder.number} />
        <JudgedPicture judged={judged} uncertainty={shown.uncertainty} />
      </div>
      <div class="result-card-verdict stack-tight">
        <VerdictMark
          verdict={counted.concession === null ? judged.verdict : 'conceded'}
          word={words.trade.verdict[judged.verdict]}
        />
        <VerdictWords judged={judged} uncertainty={shown.uncertainty} />
        {judged.verdict === 'undecidable' ? (
          <CannotDecide judged={judged} shown={shown} number={evidence.workOrder.number} />
        ) : null}
        <Conceding {...props} />
      </div>
      <div class="result-card-facts stack-tight">
        <JudgedLimit judged={judged} />
        {isRepeated ? null : (
          <div class="result-card-record">
            <p>{recordDetail(evidence, counted)}</p>
            {shown.note === '' ? null : <p>{w.noteOf(shown.note)}</p>}
            <InstrumentLabels uses={shown.instruments} />
            <p>{w.recordedBy(shown.recordedByName, minuteText(shown.recordedAt))}</p>
          </div>
        )}
      </div>
      <FaceMap evidence={evidence} result={result} />
    </article>
  )
}

/** The map of a face that was read whole, over the width of the card. */
const FaceMap: FC<Pick<ResultCardProps, 'evidence' | 'result'>> = ({ evidence, result }) => {
  const { subjectKind, subjectId } = result.counted
  if (subjectKind !== 'flatness-reading') return null
  const reading = evidence.flatnessReadings.find((one) => one.id === subjectId)
  if (reading === undefined || reading.wholeFace === null) return null
  return (
    <div class="result-card-map stack">
      <WholeFaceFigure wholeFace={reading.wholeFace} id={`map-${reading.id}`} />
      <WholeFaceFacts wholeFace={reading.wholeFace} />
    </div>
  )
}

const ResultFigure: FC<{ result: EvidenceResult; number: string }> = ({ result, number }) => {
  const { shown } = result
  const { judged, uncertainty, sees } = shown
  if (judged.value === null) return <p class="result-card-value">{words.chrome.unreadable}</p>
  const { value, unit } = uncertainText(judged.characteristic, judged.value, uncertainty)
  const second = secondResultText(judged.characteristic, judged.value)
  const detail = [
    ...(second === undefined ? [] : [`${second.value} ${second.unit}`]),
    ...(uncertainty === null ? [] : [w.factor(coverageFactorText(uncertainty.coverageFactor))]),
  ].join(' · ')
  return (
    <>
      <p class="result-card-value number">
        <a href={`/work-orders/${number}/results/${shown.kind}/${shown.id}`}>
          {value} {unit}
        </a>
      </p>
      {detail === '' ? null : <p class="cell-detail number">{detail}</p>}
      {sees === null ? null : <Sees sees={sees} />}
      {uncertainty !== null && uncertainty.leftOut.length > 0 ? (
        <p class="cell-detail">{w.budgetIncomplete}</p>
      ) : null}
    </>
  )
}

const Sees: FC<{ sees: FlatnessSees }> = ({ sees }) => (
  <>
    <p class="cell-detail strong">{words.flatnessSees[sees].name}</p>
    <p class="cell-detail">{words.flatnessSees[sees].what}</p>
  </>
)

const Conceding: FC<ResultCardProps> = ({ evidence, result, refused, formKey }) => {
  const { counted, canConcede } = result
  if (counted.concession !== null) return <ConcessionText concession={counted.concession} />
  if (!canConcede) return null
  return (
    <ConcessionForm
      number={evidence.workOrder.number}
      counted={counted}
      refused={refused}
      formKey={formKey}
    />
  )
}
