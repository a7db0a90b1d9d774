import type { FC } from 'hono/jsx'
import type { ComputedFlatness } from '../../src/domain/compute-flatness.ts'
import type { Fault } from '../../src/domain/fault.ts'
import type { BandPattern } from '../../src/domain/flatness.ts'
import { flatnessSees } from '../../src/domain/flatness-sees.ts'
import type { InstrumentUse } from '../../src/domain/instrument.ts'
import type { Judged } from '../../src/domain/judged.ts'
import type { UnreadableCause } from '../../src/domain/unreadable-cause.ts'
import { ResultFigure } from '../components/result-figure.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { limitText } from '../figures/limit-text.ts'
import { secondResultText } from '../figures/result-text.ts'
import { uncertainParts } from '../figures/uncertain-text.ts'
import { InstrumentWarnings } from '../recording/instrument-warnings.tsx'
import { words } from '../words/en.ts'
import { flatnessSentence } from './fault-sentence.ts'

/** What can be said of the reading while it is being entered. */
export type FlatnessAnswer = {
  /** Lamp and flat as far as they are chosen. */
  readonly uses: readonly InstrumentUse[]
  readonly outcome:
    | { readonly kind: 'ask'; readonly ask: 'lamp' | 'pattern' | 'count' | 'second' }
    | { readonly kind: 'faulty'; readonly faults: readonly Fault[]; readonly pattern: string }
    | ({ readonly kind: 'figures' } & FlatnessFiguresShown)
}

export type FlatnessFiguresShown = {
  readonly pattern: BandPattern
  readonly unreadableCause: UnreadableCause | null
  readonly computed: ComputedFlatness
  /** Null while no face is chosen: its material decides which limit holds. */
  readonly judged: Judged | null
  readonly readCount: number
  readonly requiredCount: number
}

/** The figure and its verdict, drawn anew by the server whenever something changes. */
export const FlatnessAnswerView: FC<{ answer: FlatnessAnswer }> = ({ answer }) => {
  const w = words.flatness
  const { outcome, uses } = answer
  return (
    <>
      {outcome.kind === 'ask' ? <Asked text={w.ask[outcome.ask]} /> : null}
      {outcome.kind === 'faulty'
        ? outcome.faults
            .slice(0, 2)
            .map((fault) => <p class="field-error">{flatnessSentence(fault, outcome.pattern)}</p>)
        : null}
      {outcome.kind === 'figures' ? <Figures shown={outcome} /> : null}
      <InstrumentWarnings uses={uses} />
    </>
  )
}

const Asked: FC<{ text: string }> = ({ text }) => (
  <>
    <p class="result-label">{words.flatness.answerTitle}</p>
    <p class="lead">{text}</p>
  </>
)

const Figures: FC<{ shown: FlatnessFiguresShown }> = ({ shown }) => {
  const { flatnessUm } = shown.computed
  const { flatness: w, trade } = words
  if (flatnessUm === null) return <Unreadable cause={shown.unreadableCause} />
  const { judged } = shown
  const limit = judged?.limit ?? null
  const value = uncertainParts('flatness', flatnessUm, shown.computed.uncertainty)
  const { name } = words.flatnessSees[flatnessSees(shown.computed.method)]
  const isShort = shown.readCount < shown.requiredCount
  return (
    <>
      <ResultFigure
        label={name}
        value={value.value}
        doubt={value.doubt}
        unit={value.unit}
        second={secondResultText('flatness', flatnessUm)}
        limit={limit === null ? undefined : `${words.recording.limit} ${limitText(limit)}`}
        verdict={judged?.verdict}
        word={judged === null ? undefined : trade.verdict[judged.verdict]}
      />
      {judged === null ? <p>{w.askFace}</p> : null}
      {isShort ? <p class="small">{w.directions(shown.readCount, shown.requiredCount)}</p> : null}
    </>
  )
}

const Unreadable: FC<{ cause: UnreadableCause | null }> = ({ cause }) => {
  const { flatness: w, trade } = words
  return (
    <>
      <p class="result-label">{w.answerTitle}</p>
      <p class="lead strong">{trade.form.unreadable}</p>
      <p class="result-verdict">
        <VerdictMark verdict="fail" word={trade.verdict.fail} size="large" />
      </p>
      <p>{trade.why.unreadable}</p>
      <p class="small">{cause === null ? w.unreadableAdvice : w.causeAdvice[cause]}</p>
    </>
  )
}
