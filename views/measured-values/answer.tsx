import type { FC } from 'hono/jsx'
import type { MeasuredCharacteristic } from '../../src/domain/characteristic.ts'
import type { FaceState } from '../../src/domain/face-state.ts'
import type { Fault } from '../../src/domain/fault.ts'
import type { FinishTraces } from '../../src/domain/finish-traces.ts'
import type { InstrumentUse } from '../../src/domain/instrument.ts'
import type { Judged } from '../../src/domain/judged.ts'
import type { Uncertainty } from '../../src/domain/uncertainty.ts'
import { ResultFigure } from '../components/result-figure.tsx'
import { limitText } from '../figures/limit-text.ts'
import { secondResultText } from '../figures/result-text.ts'
import { uncertainText } from '../figures/uncertain-text.ts'
import { ownSentence } from '../own-error-of.ts'
import { InstrumentWarnings } from '../recording/instrument-warnings.tsx'
import { words } from '../words/en.ts'

/** What can be said of the value while it is being entered. */
export type MeasuredAnswer = {
  /** The instrument, where one is chosen. */
  readonly uses: readonly InstrumentUse[]
  readonly outcome:
    | { readonly kind: 'ask'; readonly ask: 'characteristic' | 'reading' | 'instrument' }
    | { readonly kind: 'faulty'; readonly faults: readonly Fault[] }
    | ({ readonly kind: 'figures' } & MeasuredFiguresShown)
}

export type MeasuredFiguresShown = {
  readonly characteristic: MeasuredCharacteristic
  readonly valueUm: number
  readonly uncertainty: Uncertainty
  readonly readCount: number
  /** Null while no face is chosen: its material decides which limit holds. */
  readonly judged: Judged | null
  /** Of a finish. */
  readonly traces: FinishTraces | null
  /** Of a finish as left: how the face is by the lapping log, and as it is said to be. */
  readonly face: {
    readonly byLog: FaceState
    readonly at: string
    readonly stated: FaceState | null
  } | null
}

/** The figure and its verdict, drawn anew by the server whenever something changes. */
export const MeasuredAnswerView: FC<{ answer: MeasuredAnswer }> = ({ answer }) => {
  const w = words.measuredValues
  const { outcome, uses } = answer
  return (
    <>
      {outcome.kind === 'ask' ? (
        <>
          <p class="result-label">{w.answerTitle}</p>
          <p class="lead">{w.ask[outcome.ask]}</p>
        </>
      ) : null}
      {outcome.kind === 'faulty'
        ? outcome.faults
            .slice(0, 2)
            .map((fault) => <p class="field-error">{ownSentence(fault, w.faults)}</p>)
        : null}
      {outcome.kind === 'figures' ? <Figures shown={outcome} /> : null}
      <InstrumentWarnings uses={uses} />
    </>
  )
}

const Figures: FC<{ shown: MeasuredFiguresShown }> = ({ shown }) => {
  const { characteristic, valueUm, uncertainty, judged } = shown
  const { measuredValues: w, trade } = words
  const { value, unit } = uncertainText(characteristic, valueUm, uncertainty)
  return (
    <>
      <ResultFigure
        label={trade.characteristic[characteristic]}
        value={value}
        unit={unit}
        second={secondResultText(characteristic, valueUm)}
        limit={heldAgainst(judged)}
        verdict={judged?.verdict}
        word={judged === null ? undefined : trade.verdict[judged.verdict]}
      />
      {judged === null ? <p>{w.askFace}</p> : null}
      {isUnsettled(judged) ? <p class="small">{trade.why[judged.why]}</p> : null}
    </>
  )
}

/** Without a limit the drawing's place says so. */
function isUnsettled(judged: Judged | null): judged is Judged {
  if (judged === null || judged.limit === null) return false
  return judged.verdict === 'open' || judged.verdict === 'undecidable'
}

/** The limit as it holds here: one per millimetre is multiplied out. */
function heldAgainst(judged: Judged | null): string | undefined {
  if (judged === null || (judged.lower === null && judged.upper === null)) return undefined
  const { characteristic, lower, upper } = judged
  return `${words.recording.limit} ${limitText({ characteristic, lower, upper })}`
}
