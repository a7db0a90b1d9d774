import type { FC } from 'hono/jsx'
import type { Fault } from '../../src/domain/fault.ts'
import type { InstrumentUse } from '../../src/domain/instrument.ts'
import type { Judged } from '../../src/domain/judged.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { ResultFigure } from '../components/result-figure.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { limitText } from '../figures/limit-text.ts'
import { secondResultText } from '../figures/result-text.ts'
import { uncertainParts, uncertainText } from '../figures/uncertain-text.ts'
import { ownSentence } from '../own-error-of.ts'
import { InstrumentWarnings } from '../recording/instrument-warnings.tsx'
import { words } from '../words/en.ts'
import { type StaticTestPlan, StaticTestPlanView } from './plan.tsx'

/** What can be said of the test while it is being entered. */
export type StaticTestAnswer = {
  readonly uses: readonly InstrumentUse[]
  /** Null until start and volume are entered. */
  readonly plan: StaticTestPlan | null
  readonly outcome:
    | { readonly kind: 'ask' }
    | { readonly kind: 'faulty'; readonly faults: readonly Fault[] }
    | ({ readonly kind: 'figures' } & StaticTestFigures)
}

export type StaticTestFigures = {
  readonly leakPaM3PerS: number
  readonly leakMbarLPerS: number
  readonly uncompensatedPaM3PerS: number
  readonly isTemperatureChanged: boolean
  readonly startPressureKPaAbs: number
  readonly endPressureKPaAbs: number
  readonly leakUncertainty: Uncertainty | null
  readonly dropUncertainty: Uncertainty | null
  /** The smallest leak that this set-up can tell from none; null where that is not known. */
  readonly smallestSeenPaM3PerS: number | null
  readonly judged: readonly Judged[]
}

/** Leak rate, drop and their verdicts, drawn anew by the server whenever something changes. */
export const StaticTestAnswerView: FC<{ answer: StaticTestAnswer }> = ({ answer }) => {
  const w = words.staticTests
  const { outcome, uses, plan } = answer
  return (
    <>
      {outcome.kind === 'ask' ? (
        <>
          <p class="result-label">{w.answerTitle}</p>
          <p class="lead">{w.ask}</p>
        </>
      ) : null}
      {outcome.kind === 'faulty'
        ? outcome.faults
            .slice(0, 2)
            .map((fault) => <p class="field-error">{ownSentence(fault, w.faults)}</p>)
        : null}
      {outcome.kind === 'figures' ? <Figures figures={outcome} /> : null}
      <InstrumentWarnings uses={uses} />
      {plan === null ? null : <StaticTestPlanView plan={plan} />}
    </>
  )
}

const Figures: FC<{ figures: StaticTestFigures }> = ({ figures }) => {
  const w = words.staticTests
  const leak = uncertainParts('static-leak-rate', figures.leakPaM3PerS, figures.leakUncertainty)
  return (
    <>
      <ResultFigure
        label={w.answerTitle}
        value={leak.value}
        doubt={leak.doubt}
        unit={leak.unit}
        second={secondResultText('static-leak-rate', figures.leakPaM3PerS)}
      />
      <ul class="judged-list">
        {figures.judged.map((one) => (
          <JudgedLine judged={one} uncertainty={figures.dropUncertainty} />
        ))}
      </ul>
      {figures.leakPaM3PerS < 0 ? <p class="small strong">{w.rose}</p> : null}
    </>
  )
}

/** `Pressure drop 2.00 kPa, ≤ 14.00 kPa, pass`; the leak rate itself stands above. */
const JudgedLine: FC<{ judged: Judged; uncertainty: Uncertainty | null }> = (props) => {
  const { judged, uncertainty } = props
  const { characteristic, value, limit, verdict } = judged
  const { trade, recording } = words
  const isShown = characteristic !== 'static-leak-rate' && value !== null
  const shown = isShown ? uncertainText(characteristic, value, uncertainty) : null
  return (
    <li class="judged-line">
      <span>
        <span class="strong">{trade.characteristic[characteristic]}</span>{' '}
        {shown === null ? null : `${shown.value} ${shown.unit}`}
        <span class="small soft judged-limit">
          {limit === null ? recording.noLimitShort : limitText(limit)}
        </span>
      </span>
      <VerdictMark verdict={verdict} word={trade.verdict[verdict]} />
    </li>
  )
}
