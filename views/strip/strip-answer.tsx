import type { FC } from 'hono/jsx'
import type {
  CertifiedAssembly,
  CertifiedSpring,
  CertifiedTrack,
} from '../../src/domain/certified-strip.ts'
import type { Fault } from '../../src/domain/fault.ts'
import { ResultFigure } from '../components/result-figure.tsx'
import { VerdictMark } from '../components/verdict-mark.tsx'
import { type OwnSentences, ownSentence } from '../own-error-of.ts'
import { AnswerMoreFrame } from '../recording/answer-more-frame.tsx'
import { assemblySign } from '../words/en/assembly-sign.ts'
import { assemblyTexts, springTexts, trackTexts } from '../words/en/strip-texts.ts'
import { words } from '../words/en.ts'
import { AssemblyPicture, SpringPicture } from './spring-picture.tsx'
import { TrackPicture } from './track-picture.tsx'

/** What can be said of a record of which perhaps not all is entered yet. */
export type StripAnswerProps =
  | { readonly kind: 'ask'; readonly text: string }
  | { readonly kind: 'faulty'; readonly faults: readonly Fault[]; readonly own: OwnSentences }
  | { readonly kind: 'track'; readonly track: CertifiedTrack }
  | { readonly kind: 'spring'; readonly spring: CertifiedSpring }
  | { readonly kind: 'assembly'; readonly assembly: CertifiedAssembly }

/** The figure or the verdict alone, drawn anew whenever something changes. */
export const StripAnswer: FC<StripAnswerProps> = (props) => {
  if (props.kind === 'ask') return <p class="lead">{props.text}</p>
  if (props.kind === 'faulty') {
    return (
      <>
        {props.faults.slice(0, 2).map((fault) => (
          <p class="field-error">{ownSentence(fault, props.own)}</p>
        ))}
      </>
    )
  }
  if (props.kind === 'track') return <TrackAnswer track={props.track} />
  if (props.kind === 'spring') return <SpringAnswer spring={props.spring} />
  return <VerdictMark {...assemblySign(props.assembly)} size="large" />
}

/** What stands behind it, with its drawing, below the button. */
export const StripAnswerMore: FC<{ answer: StripAnswerProps; isSwap?: boolean }> = (props) => (
  <AnswerMoreFrame isSwap={props.isSwap}>
    <More answer={props.answer} />
  </AnswerMoreFrame>
)

/** What the server sends while the form is filled in. */
export const StripPreview: FC<{ answer: StripAnswerProps }> = ({ answer }) => (
  <>
    <StripAnswer {...answer} />
    <StripAnswerMore answer={answer} isSwap />
  </>
)

const More: FC<{ answer: StripAnswerProps }> = ({ answer }) => {
  if (answer.kind === 'track') {
    const [, ...more] = trackTexts(answer.track).follows
    return (
      <>
        <TrackPicture track={answer.track} id="answer-track" />
        <Lines texts={more} />
      </>
    )
  }
  if (answer.kind === 'spring') {
    return (
      <>
        <SpringPicture spring={answer.spring} id="answer-line" />
        <Lines texts={springTexts(answer.spring).follows} />
      </>
    )
  }
  if (answer.kind !== 'assembly') return null
  const { read, follows } = assemblyTexts(answer.assembly)
  return (
    <>
      <AssemblyPicture assembly={answer.assembly} id="answer-line" />
      <Lines texts={[...read, ...follows]} />
      <p class="small soft">{words.assembly.blocksNothing}</p>
    </>
  )
}

const TrackAnswer: FC<{ track: CertifiedTrack }> = ({ track }) => {
  const w = words.wearTrack
  const { movementUm, expandedUncertaintyUm: doubt } = track
  return (
    <ResultFigure
      label={movementUm.value < 0 ? w.narrowerBy : w.movement}
      value={movementUm.text.replace('−', '')}
      doubt={doubt === null ? undefined : w.doubtSign(doubt.text)}
      unit={words.trade.unit.um}
    />
  )
}

const SpringAnswer: FC<{ spring: CertifiedSpring }> = ({ spring }) => {
  const w = words.springCheck
  const { loadN, expandedUncertaintyN: doubt } = spring
  if (loadN === null) return <p class="lead">{w.noRate}</p>
  return (
    <ResultFigure
      label={w.loadTitle}
      value={loadN.text}
      doubt={doubt === null ? undefined : w.doubtSign(doubt.text)}
      unit="N"
    />
  )
}

const Lines: FC<{ texts: readonly string[] }> = ({ texts }) => (
  <ul class="stack-tight small">
    {texts.map((text) => (
      <li>{text}</li>
    ))}
  </ul>
)
