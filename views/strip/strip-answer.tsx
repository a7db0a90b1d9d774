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
import { assemblySign } from '../words/en/assembly-sign.ts'
import { assemblyTexts, springTexts, trackTexts } from '../words/en/strip-texts.ts'
import { words } from '../words/en.ts'
import { AssemblyPicture, SpringPicture } from './spring-picture.tsx'

/** What can be said of a record of which perhaps not all is entered yet. */
export type StripAnswerProps =
  | { readonly kind: 'ask'; readonly text: string }
  | { readonly kind: 'faulty'; readonly faults: readonly Fault[]; readonly own: OwnSentences }
  | { readonly kind: 'track'; readonly track: CertifiedTrack }
  | { readonly kind: 'spring'; readonly spring: CertifiedSpring }
  | { readonly kind: 'assembly'; readonly assembly: CertifiedAssembly }

/** Drawn anew whenever something changes. */
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
  return <AssemblyAnswer assembly={props.assembly} />
}

const TrackAnswer: FC<{ track: CertifiedTrack }> = ({ track }) => {
  const w = words.wearTrack
  const { movementUm, expandedUncertaintyUm: doubt } = track
  const [, ...more] = trackTexts(track).follows
  return (
    <>
      <ResultFigure
        label={movementUm.value < 0 ? w.narrowerBy : w.movement}
        value={movementUm.text.replace('−', '')}
        doubt={doubt === null ? undefined : w.doubtSign(doubt.text)}
        unit={words.trade.unit.um}
      />
      <Lines texts={more} />
    </>
  )
}

const SpringAnswer: FC<{ spring: CertifiedSpring }> = ({ spring }) => {
  const w = words.springCheck
  const { loadN, expandedUncertaintyN: doubt } = spring
  const texts = springTexts(spring).follows
  return (
    <>
      {loadN === null ? null : (
        <ResultFigure
          label={w.loadTitle}
          value={loadN.text}
          doubt={doubt === null ? undefined : w.doubtSign(doubt.text)}
          unit="N"
        />
      )}
      <SpringPicture spring={spring} id="answer-line" />
      <Lines texts={texts} />
    </>
  )
}

const AssemblyAnswer: FC<{ assembly: CertifiedAssembly }> = ({ assembly }) => {
  const { verdict, word } = assemblySign(assembly)
  const { read, follows } = assemblyTexts(assembly)
  return (
    <>
      <VerdictMark verdict={verdict} word={word} size="large" />
      <AssemblyPicture assembly={assembly} id="answer-line" />
      <Lines texts={[...read, ...follows]} />
      <p class="small soft">{words.assembly.blocksNothing}</p>
    </>
  )
}

const Lines: FC<{ texts: readonly string[] }> = ({ texts }) => (
  <>
    {texts.map((text) => (
      <p class="small">{text}</p>
    ))}
  </>
)
